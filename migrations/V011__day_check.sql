-- A check before a session, with the outcome as it was judged then: what was said on a day is never judged anew.
create table day_check (
    id text primary key,
    client_id text not null references client (id) on delete cascade,
    done_on text not null,
    answers text not null,
    glucose text,
    outcome text not null,
    whom text,
    reasons text not null,
    checked_at text not null
);

create index day_check_client on day_check (client_id, done_on);
