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
