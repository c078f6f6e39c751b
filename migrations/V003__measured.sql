create table measured (
    id text primary key,
    client_id text not null references client (id) on delete cascade,
    measure text not null,
    value double precision not null,
    done_on text not null,
    arms_used integer not null
);

create index measured_client on measured (client_id);
