-- Who is drawn in this client's pictures: the id of a look; empty for different people.
alter table client add column look text not null default '';
