-- A referral note while it is worked on: what was chosen for it, and what the client said.
create table referral (
    id text primary key,
    client_id text not null references client (id) on delete cascade,
    opened_on text not null,
    draft text not null,
    consent text not null,
    dropped_at text,
    changed_at text not null
);

create index referral_client on referral (client_id);

-- The letter and the client's copy as they went out. Written once and never changed.
create table referral_sent (
    referral_id text primary key references referral (id) on delete cascade,
    sent_on text not null,
    way text not null,
    letter text not null,
    copy text not null,
    kept_at text not null
);

-- What came back, and what it changed.
create table referral_reply (
    referral_id text primary key references referral (id) on delete cascade,
    reply text not null,
    kept_at text not null
);
