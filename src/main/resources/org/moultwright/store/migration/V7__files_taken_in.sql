create table brought_readings (
    row_no bigint generated always as identity primary key,
    deed uuid not null references deed (id),
    probe_no integer not null references probe (probe_no),
    readings integer not null check (readings > 0),
    instants varbinary not null
);
