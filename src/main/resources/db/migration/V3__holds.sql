create extension if not exists btree_gist;

-- The one place that tells the time; a test may put another in its place.
create function kit_now() returns timestamptz language sql stable as 'select statement_timestamp()';

create table hold (
    id         uuid        primary key,
    desk       text        not null,
    reference  text        not null,
    held_from  timestamptz not null,
    held_to    timestamptz not null check (held_from < held_to),
    state      text        not null check (state in
                   ('waiting', 'tentative', 'confirmed', 'out', 'returned', 'released', 'expired')),
    expires_at timestamptz,
    made_at    timestamptz not null default kit_now(),
    revision   bigint      not null default 1,
    unique (desk, reference)
);

create index hold_due on hold (expires_at) where state = 'tentative';
create index hold_waiting on hold (made_at) where state = 'waiting';

comment on table hold is 'units promised to a desk for a period';
comment on column hold.desk is 'who holds: the subject of the token that made it';
comment on column hold.reference is 'the desk''s own name for it';

create table hold_line (
    hold       uuid    not null references hold,
    line       integer not null,
    house      text    not null references house,
    microphone text    not null,
    quantity   integer not null check (quantity > 0),
    matched    boolean not null,
    primary key (hold, line)
);

create table hold_unit (
    hold       uuid      not null references hold,
    line       integer   not null,
    unit       bigint    not null references unit,
    house      text      not null,
    microphone text      not null,
    busy       tstzrange not null check (not isempty(busy)),
    occupies   boolean   not null default true,
    out_at     timestamptz,
    in_at      timestamptz,
    primary key (hold, unit),
    -- whatever the service does, PostgreSQL promises no unit twice
    constraint no_unit_twice exclude using gist (unit with =, busy with &&) where (occupies)
);

-- what is busy in a period, of some microphones in some houses, without a look at each unit
create index hold_unit_by_period on hold_unit using gist (microphone, house, busy) include (unit) where (occupies);

comment on column hold_unit.busy is 'from collection to return and turn-round, as the house had it when the hold was made';
comment on column hold_unit.house is 'of the unit, beside the period so that one index answers what is busy where';
