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
