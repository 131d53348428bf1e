-- Containers put elsewhere, stood somewhere for the first time or put away, as written at the desk. They concern every
-- brood that knows the container; what folders tell of places stays as it is.
create table container_move (
    row_no bigint generated always as identity primary key,
    deed uuid not null references deed (id),
    container varchar not null,
    kind varchar not null,
    inside varchar,
    how varchar not null,
    moved_at timestamp(9) with time zone not null
);
