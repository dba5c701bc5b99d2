create extension if not exists btree_gist;

-- The one place that tells the time; a test may put another in its place.
create function kit_now() returns timestamptz language sql stable as 'select statement_timestamp()';

-- whether all of a group is free is asked for every group that might leave, and of which kind it is for each that left
create index unit_in_group on unit (house, matched_group, microphone) include (day_rate_minor, state)
    where matched_group is not null and state <> 'retired';

create table hold (
    id           uuid        primary key,
    desk         text        not null,
    reference    text        not null,
    held_from    timestamptz not null,
    held_to      timestamptz not null check (held_from < held_to),
    state        text        not null check (state in
                     ('waiting', 'tentative', 'confirmed', 'out', 'returned', 'released', 'expired')),
    lifetime_min integer     not null default 2880 check (lifetime_min > 0),
    expires_at   timestamptz,
    made_at      timestamptz not null default kit_now(),
    changed_at   timestamptz not null default kit_now(),
    revision     bigint      not null default 1,
    unique (desk, reference),
    check (state not in ('waiting', 'tentative') or expires_at is not null)
);

create index hold_of_desk on hold (desk, id);
create index hold_due on hold (expires_at) where state in ('waiting', 'tentative');
create index hold_waiting on hold (made_at) where state = 'waiting';

comment on table hold is 'units promised to a desk for a period';
comment on column hold.desk is 'who holds: the subject of the token that made it';
comment on column hold.reference is 'the desk''s own name for it';
comment on column hold.lifetime_min is 'minutes that it stands unconfirmed, from the moment in which it has its units';
comment on column hold.expires_at is 'when it falls if nobody confirms it; a waiting one falls when its period begins';

create table hold_line (
    hold       uuid    not null references hold,
    line       integer not null,
    house      text    not null references house,
    microphone text    not null,
    quantity   integer not null check (quantity > 0),
    matched    boolean not null,
    primary key (hold, line)
);

create index hold_line_by_house on hold_line (house, hold);

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

-- the few that are with a desk now: what is late among them must not be promised
create index hold_unit_away on hold_unit (unit) where (out_at is not null and in_at is null);

comment on column hold_unit.busy is 'from collection to return and turn-round, as the house had it when the hold was made';
comment on column hold_unit.house is 'of the unit, beside the period so that one index answers what is busy where';
comment on column hold_unit.occupies is 'false where the hold fell or the unit was never collected; a returned unit occupies its past';

create view overdue_unit as
    select unit, house, microphone, hold, upper(busy) as due_at
    from hold_unit
    where out_at is not null and in_at is null and upper(busy) <= kit_now();

comment on view overdue_unit is 'with a desk beyond the end of their busy period: nobody knows when they come back, so they are promised to nobody';

-- Lets everything fall that is due, by the clock of the database, and tells whose units fell free.
create function expire_due() returns table (house text, microphone text) language sql as $$
    with due as (
        select id from hold
        where state in ('waiting', 'tentative') and expires_at <= kit_now()
        order by id
        for update
    ), fallen as (
        update hold set state = 'expired', changed_at = kit_now(), revision = revision + 1
        from due where hold.id = due.id
        returning hold.id
    ), freed as (
        update hold_unit set occupies = false
        from fallen where hold_unit.hold = fallen.id
        returning hold_unit.house, hold_unit.microphone
    )
    select distinct freed.house, freed.microphone from freed
$$;
