-- How a result was come by: the unit it was typed in (empty for the test's own), what could not be done, side, aid, and the
-- parts of a test that has several. A result that was typed wrongly is taken back, not deleted, so that this can be undone.
alter table measured add column unit text not null default '';
alter table measured add column unable integer not null default 0;
alter table measured add column side text not null default '';
alter table measured add column aid text not null default 'NONE';
alter table measured add column parts text not null default '{}';
alter table measured add column taken_back_at text;
