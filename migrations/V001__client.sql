-- A client from the first answer on. The JSON columns are filled when intake is finished, not before.
create table client (
    id text primary key,
    name text not null,
    opened_at text not null,
    changed_at text not null,
    profile text,
    home text,
    wishes text,
    readiness text,
    falls text,
    vitals text
);

-- What was typed at intake and is not finished yet, right or wrong, as it came.
create table draft (
    client_id text primary key references client (id) on delete cascade,
    answers text not null,
    changed_at text not null
);
