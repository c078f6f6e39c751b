-- Who the practice is and what it has chosen: no row or one.
create table practice (
    id text primary key check (id = 'own'),
    name text not null,
    address text not null,
    phone text not null,
    email text not null,
    country text not null,
    country_name text not null,
    emergency_number text not null,
    instructor_name text not null,
    instructor_role text not null,
    qualification text not null,
    registration text not null,
    rest_set text not null,
    falls_set text not null,
    pain_zones text not null,
    changed_at text not null
);

-- A rule that a clinician signed off, with the text that was signed. Taken back, it stays as a record.
create table sign_off (
    id text primary key,
    rule text not null,
    signed text not null,
    who text not null,
    role text not null,
    signed_on text not null,
    signed_at text not null,
    taken_back_at text
);

create index sign_off_rule on sign_off (rule);

-- One line for each change that somebody may have to account for. What is about a client goes when the client is erased.
create table audit (
    id text primary key,
    client_id text references client (id) on delete cascade,
    subject text not null,
    what text not null,
    at text not null
);

create index audit_client on audit (client_id);
