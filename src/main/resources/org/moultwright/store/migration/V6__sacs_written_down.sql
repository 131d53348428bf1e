-- A brood written down at the desk stands while the deed that began it does; one that came with a folder has no such deed.
alter table brood add column begun_by uuid;

-- When a sac was taken from its mother, as written at the desk; the latest that stands holds.
create table pull_note (
    row_no bigint generated always as identity primary key,
    brood varchar not null references brood (code),
    deed uuid not null references deed (id),
    id uuid not null unique,
    happened_at timestamp(9) with time zone not null
);
