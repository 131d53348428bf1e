-- For tests only: what a next version could look like.
alter table brood add column nickname varchar;
update brood set nickname = code;
