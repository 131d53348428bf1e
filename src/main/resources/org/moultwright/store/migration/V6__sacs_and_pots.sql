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

-- How large a pot is, in the keeper's words.
alter table pot add column pot_size varchar default '' not null;

-- What happened to the animals of pots. One deed may tell of pots of several broods; it then belongs to none, and each
-- of these rows and of its ledger entries names its own brood.
create table pot_event (
    row_no bigint generated always as identity primary key,
    brood varchar not null references brood (code),
    deed uuid references deed (id),
    id uuid not null unique,
    pot varchar not null,
    happened_at timestamp(9) with time zone not null,
    what varchar not null,
    note varchar not null
);
create index pot_event_by_brood on pot_event (brood);
