alter table unit
    add column replacement_minor bigint check (replacement_minor >= 0),
    add column match_within_db   double precision check (match_within_db between 0 and 6);

comment on column unit.replacement_minor is 'what the house asks for it where it does not come back, in minor units of its currency';
comment on column unit.match_within_db is 'how far the sensitivities of its group are apart at most, by the house''s own measure';

-- What a desk was told does not change behind its back. Without a value in promises that were made before: nobody noted
-- it, and an instance of the version before may still be writing.
alter table hold_unit
    add column day_rate_minor    bigint check (day_rate_minor >= 0),
    add column replacement_minor bigint check (replacement_minor >= 0),
    add column lent_to           timestamptz;

comment on column hold_unit.day_rate_minor is 'of the unit when it was promised';
comment on column hold_unit.replacement_minor is 'of the unit when it was promised';
comment on column hold_unit.lent_to is 'when it should come back; an extension does not move it for what is back already';

-- A house may put a promised unit into repair, or take it out of its group; whoever holds it is told. Planned each time,
-- as count_shelves is, and for the same reason.
create function promised_units_changed() returns trigger language plpgsql
set plan_cache_mode = 'force_custom_plan' as $$
declare
    changed bigint[];
begin
    select array_agg(n.id) into changed
    from old_rows o full join new_rows n on n.id = o.id
    where (o.state, o.matched_group) is distinct from (n.state, n.matched_group);
    if changed is not null then
        insert into event (kind, hold, desk, detail)
        select 'hold-unit-changed', b.hold, h.desk, jsonb_build_object(
            'house', u.house, 'serial', u.serial, 'state', u.state, 'matched_group', u.matched_group)
        from unnest(changed) as c (id)
            join unit u on u.id = c.id
            join hold_unit b on b.unit = c.id and b.occupies and b.in_at is null
                and b.busy && tstzrange(kit_now(), null)
            join hold h on h.id = b.hold
        order by b.hold, u.serial;
    end if;
    return null;
end
$$;

create trigger event_promised after update on unit referencing old table as old_rows new table as new_rows
    for each statement execute function promised_units_changed();
