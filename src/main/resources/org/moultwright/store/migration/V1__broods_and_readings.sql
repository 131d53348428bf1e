-- Instants are stored with their zone (always UTC), enums by their key, what is unknown as null.
-- Rows are read back in the order they were written: row_no.

create table brood (
    code varchar not null primary key,
    taxon varchar not null,
    zone varchar not null,
    laid_earliest timestamp(9) with time zone,
    laid_latest timestamp(9) with time zone,
    pulled timestamp(9) with time zone,
    reference_celsius double precision not null
);

create table brood_stage (
    brood varchar not null references brood (code),
    stage varchar not null,
    primary key (brood, stage)
);

create table timing (
    brood varchar not null primary key references brood (code),
    batch_sd double precision not null,
    rate_form varchar not null,
    lower_celsius double precision,
    upper_celsius double precision,
    rho double precision,
    maximum_celsius double precision,
    delta_celsius double precision,
    lambda double precision
);

create table timing_median (
    brood varchar not null references timing (brood),
    stage varchar not null,
    warm_days double precision not null,
    primary key (brood, stage)
);

create table timing_rate_point (
    brood varchar not null references timing (brood),
    temperature_celsius double precision not null,
    rate double precision not null,
    primary key (brood, temperature_celsius)
);

-- What the keeper wrote down at one go. Rows that came with a brood folder belong to no deed.
create table deed (
    row_no bigint generated always as identity primary key,
    id uuid not null unique,
    brood varchar not null references brood (code),
    done_at timestamp(9) with time zone not null,
    words varchar not null,
    undoes uuid unique references deed (id)
);

create table ledger_entry (
    row_no bigint generated always as identity primary key,
    brood varchar not null references brood (code),
    deed uuid references deed (id),
    id uuid not null unique,
    happened_at timestamp(9) with time zone not null,
    from_account varchar not null,
    to_account varchar not null,
    stage varchar not null,
    animals integer not null check (animals > 0),
    cause varchar not null,
    note varchar not null,
    corrects uuid unique references ledger_entry (id)
);

create table tray_check (
    row_no bigint generated always as identity primary key,
    brood varchar not null references brood (code),
    deed uuid references deed (id),
    id uuid not null unique,
    happened_at timestamp(9) with time zone not null,
    tray varchar not null
);

create table tray_look (
    tray_check uuid not null references tray_check (id),
    stage varchar not null,
    how varchar not null,
    animals integer,
    looked_at integer,
    primary key (tray_check, stage)
);

create table mould_note (
    row_no bigint generated always as identity primary key,
    brood varchar not null references brood (code),
    deed uuid references deed (id),
    id uuid not null unique,
    happened_at timestamp(9) with time zone not null,
    tray varchar not null,
    grew_on varchar not null,
    extent varchar not null,
    action_taken varchar not null,
    lost integer not null
);

create table care_note (
    row_no bigint generated always as identity primary key,
    brood varchar not null references brood (code),
    deed uuid references deed (id),
    id uuid not null unique,
    happened_at timestamp(9) with time zone not null,
    tray varchar not null,
    what varchar not null,
    note varchar not null
);

-- A code may stand again after the deed that gave it was undone, so that it is not unique here.
create table pot (
    row_no bigint generated always as identity primary key,
    brood varchar not null references brood (code),
    deed uuid references deed (id),
    code varchar not null,
    tray varchar not null,
    potted timestamp(9) with time zone not null,
    label varchar not null
);
create index pot_by_code on pot (code);

create table run_up_event (
    row_no bigint generated always as identity primary key,
    brood varchar not null references brood (code),
    deed uuid references deed (id),
    id uuid not null unique,
    happened_at timestamp(9) with time zone not null,
    what varchar not null,
    note varchar not null
);

-- The places of a room are shared by its broods; each brood names those that matter to it.
create table stay (
    row_no bigint generated always as identity primary key,
    container varchar not null,
    kind varchar not null,
    inside varchar,
    from_at timestamp(9) with time zone not null,
    until_at timestamp(9) with time zone
);
create index stay_by_container on stay (container);

create table brood_stay (
    row_no bigint generated always as identity primary key,
    brood varchar not null references brood (code),
    place bigint not null references stay (row_no),
    unique (brood, place)
);

create table set_point (
    row_no bigint generated always as identity primary key,
    container varchar not null,
    from_at timestamp(9) with time zone not null,
    until_at timestamp(9) with time zone,
    temperature_celsius double precision not null,
    humidity_percent double precision
);
create index set_point_by_container on set_point (container);

create table brood_set_point (
    row_no bigint generated always as identity primary key,
    brood varchar not null references brood (code),
    place bigint not null references set_point (row_no),
    unique (brood, place)
);

create table probe (
    probe_no integer generated always as identity primary key,
    code varchar not null unique
);

create table probe_stay (
    row_no bigint generated always as identity primary key,
    probe varchar not null references probe (code),
    container varchar not null,
    from_at timestamp(9) with time zone not null,
    until_at timestamp(9) with time zone,
    offset_celsius double precision not null,
    sd_celsius double precision not null
);

create table brood_probe_stay (
    row_no bigint generated always as identity primary key,
    brood varchar not null references brood (code),
    place bigint not null references probe_stay (row_no),
    unique (brood, place)
);

-- The latest hour of a probe stands in rows, every hour before it packed in one row. Times are
-- milliseconds since 1970, UTC; hours are counted from there. No hour stands in both tables.
create table reading_row (
    probe_no integer not null references probe (probe_no),
    taken_at_millis bigint not null,
    temperature_celsius double precision,
    humidity_percent double precision,
    quality varchar not null,
    raw_line varchar not null,
    primary key (probe_no, taken_at_millis)
);

create table reading_hour (
    probe_no integer not null references probe (probe_no),
    hour_no bigint not null,
    readings integer not null check (readings > 0),
    series varbinary not null,
    raw_lines varbinary,
    primary key (probe_no, hour_no)
);
