-- A limitation that no longer holds is ended, not deleted: an older program rests on it.
create table limitation (
    id text primary key,
    client_id text not null references client (id) on delete cascade,
    preset text not null,
    words text not null,
    side text not null,
    source text not null,
    since text not null,
    review text,
    limits text not null,
    cautions text not null,
    logged_at text not null,
    ended_at text
);

create index limitation_client on limitation (client_id);
