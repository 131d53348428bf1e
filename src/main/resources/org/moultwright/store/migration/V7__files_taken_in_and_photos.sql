create table brought_readings (
    row_no bigint generated always as identity primary key,
    deed uuid not null references deed (id),
    probe_no integer not null references probe (probe_no),
    readings integer not null check (readings > 0),
    instants varbinary not null
);

-- Photos of trays. The pictures are files in a folder beside the store, named by the SHA-256 of their bytes.
create table tray_photo (
    row_no bigint generated always as identity primary key,
    brood varchar not null references brood (code),
    deed uuid references deed (id),
    id uuid not null unique,
    happened_at timestamp(9) with time zone not null,
    tray varchar not null,
    picture varchar not null,
    called varchar not null
);
create index tray_photo_by_brood on tray_photo (brood);
