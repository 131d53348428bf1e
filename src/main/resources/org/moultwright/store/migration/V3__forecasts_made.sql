-- Every forecast as it was made, to be scored when the truth is known. Belongs to no deed: nothing in it is undone.
create table forecast_made (
    row_no bigint generated always as identity primary key,
    id uuid not null unique,
    brood varchar not null,
    as_of timestamp(9) with time zone not null,
    prior_from varchar not null,
    learned_broods integer not null,
    checks integer not null
);
create index forecast_made_by_brood on forecast_made (brood);

create table forecast_event (
    row_no bigint generated always as identity primary key,
    forecast uuid not null references forecast_made (id),
    tray varchar not null,
    stage varchar not null,
    milestone varchar not null,
    -- every fifth percentile from 0 to 100, in milliseconds of the epoch, eight bytes each
    twentieths varbinary not null
);
create index forecast_event_by_forecast on forecast_event (forecast);
