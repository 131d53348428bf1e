-- For tests only: the database cannot take back its first step when the second fails.
alter table brood drop column taxon;
insert into no_such_table values (1);
