-- A deed about the room's instruments belongs to no brood.
alter table deed alter column brood drop not null;

create table calibration (
    row_no bigint generated always as identity primary key,
    deed uuid references deed (id),
    id uuid not null unique,
    probe varchar not null references probe (code),
    method varchar not null,
    done_at timestamp(9) with time zone not null,
    applies_from timestamp(9) with time zone not null,
    expires_at timestamp(9) with time zone not null,
    origin double precision not null,
    correction double precision not null,
    slope double precision not null,
    correction_variance double precision not null,
    slope_variance double precision not null,
    covariance double precision not null,
    common_sd double precision not null,
    note varchar not null
);

create table calibration_point (
    calibration uuid not null references calibration (id),
    point_no integer not null,
    reference_value double precision not null,
    reference_sd double precision not null,
    indicated double precision not null,
    indicated_sd double precision not null,
    source varchar not null,
    primary key (calibration, point_no)
);

create table display_note (
    row_no bigint generated always as identity primary key,
    deed uuid references deed (id),
    id uuid not null unique,
    happened_at timestamp(9) with time zone not null,
    container varchar not null,
    temperature_celsius double precision not null,
    step_celsius double precision not null,
    note varchar not null
);

-- What happened to alarms. Belongs to no deed: nothing in it is undone.
create table alarm_entry (
    row_no bigint generated always as identity primary key,
    id uuid not null unique,
    happened_at timestamp(9) with time zone not null,
    container varchar not null,
    kind varchar not null,
    turn varchar not null,
    measured double precision,
    quiet_until timestamp(9) with time zone
);
create index alarm_entry_by_container on alarm_entry (container);
