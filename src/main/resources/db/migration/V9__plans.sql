-- A connection keeps the plan of a trigger's query, as it was made for the first statement: if that changed one unit, a
-- join of the rows before and after is done row by row, and a kit of a hundred thousand takes hours. A full join never
-- is. Hence the rule: rows before and after meet in a full join, and its conditions take nulls, or the planner would
-- make an inner join of it. No row of one side is alone, because ids never change.
create or replace function units_changed() returns trigger language plpgsql as $$
declare
    houses text[];
    microphones text[];
begin
    if tg_op = 'INSERT' then
        select array_agg(house), array_agg(microphone) into houses, microphones
        from (select distinct house, microphone from new_rows) as changed;
    elsif tg_op = 'DELETE' then
        select array_agg(house), array_agg(microphone) into houses, microphones
        from (select distinct house, microphone from old_rows) as changed;
    else
        select array_agg(house), array_agg(microphone) into houses, microphones
        from (
            select distinct w.house, w.microphone
            from old_rows o full join new_rows n on n.id = o.id
                cross join lateral (values (o.house, o.microphone), (n.house, n.microphone)) as w (house, microphone)
            where (o.house, o.microphone, o.matched_group, o.state, o.day_rate_minor)
                is distinct from (n.house, n.microphone, n.matched_group, n.state, n.day_rate_minor)
        ) as changed;
    end if;
    if houses is not null then
        perform count_shelves(houses, microphones);
    end if;
    return null;
end
$$;

create or replace function kit_changed() returns trigger language plpgsql as $$
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
        from new_rows n full join old_rows o on o.id = n.id
        where n is distinct from o
        group by n.house order by n.house;
    end if;
    return null;
end
$$;

create or replace function house_changed() returns trigger language plpgsql as $$
begin
    if tg_op = 'INSERT' then
        insert into event (kind, house) select 'house-added', id from new_rows order by id;
    else
        insert into event (kind, house)
        select 'house-changed', n.id
        from new_rows n full join old_rows o on o.id = n.id
        where n.revision is distinct from o.revision
        order by n.id;
    end if;
    return null;
end
$$;

create or replace function hold_changed() returns trigger language plpgsql as $$
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
        from new_rows n full join old_rows o on o.id = n.id
        order by n.id;
    end if;
    return null;
end
$$;

-- Counts shelf by shelf. One query over all of them would rest on how many units the planner believes that there are:
-- none, where a large kit was taken back and the table analysed since, and then it goes through all for every one. And
-- planned each time, because after five times a connection keeps one plan, which for a few units reads them all.
create or replace function count_shelves(houses text[], microphones text[]) returns void language plpgsql
set plan_cache_mode = 'force_custom_plan' as $$
begin
    perform from house where id = any (houses) order by id for no key update;
    delete from shelf using unnest(houses, microphones) as w (house, microphone)
    where shelf.house = w.house and shelf.microphone = w.microphone;
    insert into shelf
    select w.house, w.microphone, counted.*
    from unnest(houses, microphones) as w (house, microphone)
        cross join lateral (
            with units as materialized (
                select u.matched_group, u.state, u.day_rate_minor
                from unit u
                where u.house = w.house and u.microphone = w.microphone and u.state <> 'retired'
            ), loose as (
                select day_rate_minor as rate, count(*)::integer as units
                from units
                where matched_group is null and state = 'available'
                group by day_rate_minor
            ), whole as (
                select string_agg(day_rate_minor::text, ',' order by day_rate_minor) collate "C" as rates
                from units
                where matched_group is not null
                group by matched_group
                having bool_and(state = 'available')
            ), kind as (
                select rates, count(*)::integer as groups from whole group by rates
            )
            select (select count(*) from units) as units,
                (select count(*) from units where state = 'in-repair') as in_repair,
                coalesce((select array_agg(rate order by rate) from loose), '{}') as loose_rates,
                coalesce((select array_agg(units order by rate) from loose), '{}') as loose_counts,
                coalesce((select array_agg(rates order by rates) from kind), '{}') as group_rates,
                coalesce((select array_agg(groups order by rates) from kind), '{}') as group_counts
        ) as counted
    where counted.units > 0;
end
$$;
