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
