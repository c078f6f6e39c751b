-- What the instructor changed in a limitation's limits, and why: loosening what a clinician ordered asks for a reason.
create table limitation_change (
    id text primary key,
    limitation_id text not null references limitation (id) on delete cascade,
    before text not null,
    after text not null,
    reason text not null,
    changed_at text not null
);

create index limitation_change_limitation on limitation_change (limitation_id);
