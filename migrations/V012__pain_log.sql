-- Pain of one session. The next morning is told later, and the outcome is judged again then.
create table pain_log (
    id text primary key,
    client_id text not null references client (id) on delete cascade,
    done_on text not null,
    place text not null,
    log text not null,
    outcome text not null,
    urgency text,
    finding text not null,
    logged_at text not null
);

create index pain_log_client on pain_log (client_id, done_on);
