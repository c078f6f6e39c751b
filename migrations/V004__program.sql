create table program (
    id text primary key,
    client_id text not null unique references client (id) on delete cascade,
    begun_at text not null
);

-- Versions are written once and never changed: a handout or a reason may rest on any of them.
create table version (
    program_id text not null references program (id) on delete cascade,
    number integer not null,
    made_on text not null,
    reason text not null,
    content text not null,
    kept_at text not null,
    primary key (program_id, number)
);
