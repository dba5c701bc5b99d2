-- What a house has of a model is counted when its units change, not when somebody asks: a question about a thousand
-- shelves reads a thousand rows and takes off what is busy, however many units stand on them.
create table shelf (
    house           text      not null references house,
    microphone      text      not null,
    unit_count      integer   not null,
    in_repair_count integer   not null,
    loose_rates     bigint[]  not null,
    loose_counts    integer[] not null,
    group_rates     text[]    not null,
    group_counts    integer[] not null,
    primary key (house, microphone)
);

comment on table shelf is 'what a house has of a model, busy or not; written by triggers of unit';
comment on column shelf.loose_rates is 'rates of available units that belong to no group, cheapest first';
comment on column shelf.loose_counts is 'how many of each rate';
comment on column shelf.group_rates is 'rates of the units of groups that are available as a whole, as 1000,1000';
comment on column shelf.group_counts is 'how many groups of each such kind';

-- Counts shelves anew. Others who change units of these houses wait, as they do for the whole kit of a house.
create function count_shelves(houses text[], microphones text[]) returns void language plpgsql as $$
begin
    perform from house where id = any (houses) order by id for no key update;
    delete from shelf using unnest(houses, microphones) as w (house, microphone)
    where shelf.house = w.house and shelf.microphone = w.microphone;
    insert into shelf
    with units as materialized (
        select u.house, u.microphone, u.matched_group, u.state, u.day_rate_minor
        from unnest(houses, microphones) as w (house, microphone)
            join unit u on u.house = w.house and u.microphone = w.microphone and u.state <> 'retired'
    ), loose as (
        select house, microphone, array_agg(day_rate_minor order by day_rate_minor) as rates,
            array_agg(units order by day_rate_minor) as counts
        from (select house, microphone, day_rate_minor, count(*)::integer as units
              from units where matched_group is null and state = 'available'
              group by house, microphone, day_rate_minor) as by_rate
        group by house, microphone
    ), whole as (
        select house, microphone, array_agg(rates order by rates collate "C") as rates,
            array_agg(groups order by rates collate "C") as counts
        from (select house, microphone, rates, count(*)::integer as groups
              from (select house, microphone, string_agg(day_rate_minor::text, ',' order by day_rate_minor) as rates
                    from units where matched_group is not null
                    group by house, microphone, matched_group
                    having bool_and(state = 'available')) as by_group
              group by house, microphone, rates) as by_kind
        group by house, microphone
    )
    select units.house, units.microphone, count(*), count(*) filter (where units.state = 'in-repair'),
        coalesce(loose.rates, '{}'), coalesce(loose.counts, '{}'),
        coalesce(whole.rates, '{}'), coalesce(whole.counts, '{}')
    from units
        left join loose on loose.house = units.house and loose.microphone = units.microphone
        left join whole on whole.house = units.house and whole.microphone = units.microphone
    group by units.house, units.microphone, loose.rates, loose.counts, whole.rates, whole.counts;
end
$$;

create function units_changed() returns trigger language plpgsql as $$
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
            from old_rows o join new_rows n on n.id = o.id
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

create trigger shelf_insert after insert on unit referencing new table as new_rows
    for each statement execute function units_changed();
create trigger shelf_update after update on unit referencing old table as old_rows new table as new_rows
    for each statement execute function units_changed();
create trigger shelf_delete after delete on unit referencing old table as old_rows
    for each statement execute function units_changed();

select count_shelves(array_agg(house), array_agg(microphone))
from (select distinct house, microphone from unit) as known;
