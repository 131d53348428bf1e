-- Lowest and highest values: of one brood where they came with its folder, else of the room and by a deed.
create table extremes (
    row_no bigint generated always as identity primary key,
    brood varchar references brood (code),
    deed uuid references deed (id),
    container varchar not null,
    from_at timestamp(9) with time zone not null,
    until_at timestamp(9) with time zone not null,
    lowest_celsius double precision not null,
    highest_celsius double precision not null,
    lowest_percent double precision,
    highest_percent double precision
);

-- Where probes were put, as written at the desk: for every brood that knows the container.
create table probe_placing (
    row_no bigint generated always as identity primary key,
    deed uuid not null references deed (id),
    probe varchar not null references probe (code),
    container varchar not null,
    from_at timestamp(9) with time zone not null,
    until_at timestamp(9) with time zone,
    offset_celsius double precision not null,
    sd_celsius double precision not null
);

-- What was read off a thermometer and written down. What stands is among the readings of all probes too.
create table hand_reading (
    row_no bigint generated always as identity primary key,
    deed uuid not null references deed (id),
    probe varchar not null references probe (code),
    taken_at timestamp(9) with time zone not null,
    temperature_celsius double precision,
    humidity_percent double precision,
    quality varchar not null
);

-- What a keeper came to believe of a brood's timing: the latest that stands holds, before what came with the brood.
-- A note without a believed timing says that nothing is believed any more.
create table belief_note (
    row_no bigint generated always as identity primary key,
    brood varchar not null references brood (code),
    deed uuid references deed (id),
    id uuid not null unique,
    happened_at timestamp(9) with time zone not null
);
create index belief_note_by_brood on belief_note (brood);

create table believed_timing (
    note uuid not null primary key references belief_note (id),
    batch_sd double precision not null,
    rate_form varchar not null,
    lower_celsius double precision,
    upper_celsius double precision,
    rho double precision,
    maximum_celsius double precision,
    delta_celsius double precision,
    lambda double precision
);

create table believed_timing_median (
    note uuid not null references believed_timing (note),
    stage varchar not null,
    warm_days double precision not null,
    primary key (note, stage)
);

create table believed_timing_rate_point (
    note uuid not null references believed_timing (note),
    temperature_celsius double precision not null,
    rate double precision not null,
    primary key (note, temperature_celsius)
);

-- Whether a completed brood is to teach later ones: the latest that stands holds.
create table lesson_note (
    row_no bigint generated always as identity primary key,
    brood varchar not null references brood (code),
    deed uuid references deed (id),
    id uuid not null unique,
    happened_at timestamp(9) with time zone not null,
    left_out boolean not null,
    reason varchar not null
);
create index lesson_note_by_brood on lesson_note (brood);

-- Packed hours of a probe rolled up: lowest, highest, first, last, sum and counts of 15 minutes, an hour and a
-- day, so many of one level in a row. Rows of the latest hour are not in them. A probe whose hours are packed and
-- that has none, as in a store of before, is rolled up when the store is opened.
create table roll_up (
    probe_no integer not null references probe (probe_no),
    minutes integer not null,
    span_no bigint not null,
    roll_ups varbinary not null,
    primary key (probe_no, minutes, span_no)
);

-- How far into the file of each logger beside the store its readings are taken in.
create table spool (
    id uuid not null primary key,
    taken_bytes bigint not null
);

-- Which sensor spoke as a probe, from when on.
create table probe_sensor (
    row_no bigint generated always as identity primary key,
    probe varchar not null references probe (code),
    sensor varchar not null,
    from_at timestamp(9) with time zone not null
);
