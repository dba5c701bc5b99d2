create table idempotency_key (
    caller      text        not null,
    key         text        not null,
    fingerprint bytea       not null,
    hold        uuid        not null references hold,
    answer      text        not null,
    made_at     timestamptz not null default kit_now(),
    primary key (caller, key)
);

create index idempotency_key_by_age on idempotency_key (made_at);

comment on table idempotency_key is 'what was answered to a request that may come again, written with its effect';
comment on column idempotency_key.fingerprint is 'digest of the body that the key came with first';

-- Where in the feed what happens now belongs. Never before the number of its own transaction: a reader keeps behind the
-- oldest one that is still open, so none is overtaken. And never before what was committed already, which it may rest
-- on: a transaction can have its number early and wait for another that came later.
create function event_place() returns xid8 language sql volatile as $$
    select greatest(
        pg_current_xact_id(),
        (pg_snapshot_xmax(pg_current_snapshot())::text::bigint - 1)::text::xid8)
$$;

create table event (
    id     bigint      generated always as identity primary key,
    tx     xid8        not null default event_place(),
    at     timestamptz not null default kit_now(),
    kind   text        not null,
    house  text,
    hold   uuid,
    desk   text,
    detail jsonb       not null default '{}'
);

create index event_in_order on event (tx, id);

comment on table event is 'what happened, in an order that never changes: by tx, then by number';
comment on column event.tx is 'number of the transaction, or of a later one that had ended when this happened';
comment on column event.house is 'whose kit it is about; null where it is about a hold';
comment on column event.desk is 'who alone, beside the houses of the hold, may read it; null where everybody may';

create table audit (
    id         bigint      generated always as identity primary key,
    tx         xid8        not null default pg_current_xact_id(),
    at         timestamptz not null default kit_now(),
    actor      text        not null,
    table_name text        not null,
    row_key    text        not null,
    before     jsonb,
    after      jsonb
);

create index audit_by_row on audit (table_name, row_key, id);

comment on table audit is 'every change of a house, a unit or a hold, written by triggers so that no code can forget it';
comment on column audit.actor is 'subject of the token, or the database user where none was told';

create function audit_actor() returns text language sql stable as $$
    select coalesce(nullif(current_setting('standoff.actor', true), ''), session_user)
$$;

-- The arguments name the columns of the key. The key as an expression and the actor once, because a kit of a hundred
-- thousand units is one statement.
create function audit_rows() returns trigger language plpgsql as $$
declare
    who constant text := audit_actor();
    first constant text := tg_argv[0];
    second constant text := tg_argv[1];
begin
    if tg_op = 'INSERT' then
        insert into audit (actor, table_name, row_key, after)
        select who, tg_table_name, concat_ws(' ', row ->> first, row ->> second), row
        from (select to_jsonb(n) as row from new_rows n offset 0) as changed;
    elsif tg_op = 'DELETE' then
        insert into audit (actor, table_name, row_key, before)
        select who, tg_table_name, concat_ws(' ', row ->> first, row ->> second), row
        from (select to_jsonb(o) as row from old_rows o offset 0) as changed;
    else
        insert into audit (actor, table_name, row_key, before, after)
        select who, tg_table_name, coalesce(b.key, a.key), b.row, a.row
        from (select concat_ws(' ', row ->> first, row ->> second) as key, row
              from (select to_jsonb(o) as row from old_rows o offset 0) as o) as b
        full join (select concat_ws(' ', row ->> first, row ->> second) as key, row
                   from (select to_jsonb(n) as row from new_rows n offset 0) as n) as a
            on a.key = b.key
        where a.row is distinct from b.row;
    end if;
    return null;
end
$$;

create trigger audit_insert after insert on house referencing new table as new_rows
    for each statement execute function audit_rows('id');
create trigger audit_update after update on house referencing old table as old_rows new table as new_rows
    for each statement execute function audit_rows('id');
create trigger audit_delete after delete on house referencing old table as old_rows
    for each statement execute function audit_rows('id');

create trigger audit_insert after insert on unit referencing new table as new_rows
    for each statement execute function audit_rows('id');
create trigger audit_update after update on unit referencing old table as old_rows new table as new_rows
    for each statement execute function audit_rows('id');
create trigger audit_delete after delete on unit referencing old table as old_rows
    for each statement execute function audit_rows('id');

create trigger audit_insert after insert on hold referencing new table as new_rows
    for each statement execute function audit_rows('id');
create trigger audit_update after update on hold referencing old table as old_rows new table as new_rows
    for each statement execute function audit_rows('id');
create trigger audit_delete after delete on hold referencing old table as old_rows
    for each statement execute function audit_rows('id');

create trigger audit_insert after insert on hold_unit referencing new table as new_rows
    for each statement execute function audit_rows('hold', 'unit');
create trigger audit_update after update on hold_unit referencing old table as old_rows new table as new_rows
    for each statement execute function audit_rows('hold', 'unit');
create trigger audit_delete after delete on hold_unit referencing old table as old_rows
    for each statement execute function audit_rows('hold', 'unit');

-- A house that publishes twenty thousand units is one event: whoever follows reads its kit again.
create function kit_changed() returns trigger language plpgsql as $$
begin
    if tg_op = 'INSERT' then
        insert into event (kind, house, detail)
        select 'kit-changed', house, jsonb_build_object('added_count', count(*), 'changed_count', 0, 'retired_count', 0)
        from new_rows group by house order by house;
    else
        insert into event (kind, house, detail)
        select 'kit-changed', n.house, jsonb_build_object(
            'added_count', 0,
            'changed_count', count(*) filter (where n.state <> 'retired' or o.state = 'retired'),
            'retired_count', count(*) filter (where n.state = 'retired' and o.state <> 'retired'))
        from new_rows n join old_rows o on o.id = n.id
        where n is distinct from o
        group by n.house order by n.house;
    end if;
    return null;
end
$$;

create trigger event_insert after insert on unit referencing new table as new_rows
    for each statement execute function kit_changed();
create trigger event_update after update on unit referencing old table as old_rows new table as new_rows
    for each statement execute function kit_changed();

-- Publishing units counts on in the house too; that alone is no change of its terms.
create function house_changed() returns trigger language plpgsql as $$
begin
    if tg_op = 'INSERT' then
        insert into event (kind, house) select 'house-added', id from new_rows order by id;
    else
        insert into event (kind, house)
        select 'house-changed', n.id
        from new_rows n join old_rows o on o.id = n.id
        where n.revision <> o.revision
        order by n.id;
    end if;
    return null;
end
$$;

create trigger event_insert after insert on house referencing new table as new_rows
    for each statement execute function house_changed();
create trigger event_update after update on house referencing old table as old_rows new table as new_rows
    for each statement execute function house_changed();

create function hold_changed() returns trigger language plpgsql as $$
begin
    if tg_op = 'INSERT' then
        insert into event (kind, hold, desk) select 'hold-' || state, id, desk from new_rows order by id;
    else
        insert into event (kind, hold, desk)
        select case
                   when n.state <> o.state then 'hold-' || n.state
                   when n.held_to <> o.held_to then 'hold-extended'
                   else 'hold-changed'
               end, n.id, n.desk
        from new_rows n join old_rows o on o.id = n.id
        order by n.id;
    end if;
    return null;
end
$$;

create trigger event_insert after insert on hold referencing new table as new_rows
    for each statement execute function hold_changed();
create trigger event_update after update on hold referencing old table as old_rows new table as new_rows
    for each statement execute function hold_changed();
