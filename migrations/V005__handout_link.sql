-- A link opens the newest handout of one program and nothing else, until it is withdrawn.
create table handout_link (
    token text primary key,
    program_id text not null references program (id) on delete cascade,
    made_at text not null,
    withdrawn_at text
);

create index handout_link_program on handout_link (program_id);
