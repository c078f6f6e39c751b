-- Which working group on muscle loss a practice follows.
alter table practice add column consensus text not null default 'EUROPE';
