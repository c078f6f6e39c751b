-- What the catalogue says, for finding by text: one row a variant, filled anew at start when the catalogue has changed.
-- Full text is the one thing here that every database does its own way. FTS5 belongs to SQLite; elsewhere the same
-- columns become a table with that database's own index, and only SearchStore has to know.
create virtual table search using fts5 (
    movement unindexed,
    variant unindexed,
    movement_name,
    variant_name,
    why,
    goals,
    set_up,
    steps,
    feel,
    tokenize = "porter unicode61 remove_diacritics 2"
);

-- The fingerprint of the catalogue that the rows were made from: no row or one.
create table search_source (
    fingerprint text primary key
);
