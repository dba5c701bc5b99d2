-- Availability walks the shelves of a house: one of some models, or all of them for a whole stock. Units in repair are
-- on it too, because a matched group with one of them is no group that can leave.
create index unit_on_shelf on unit (house, microphone) include (id, matched_group, day_rate_minor, state)
    where state <> 'retired';

-- By the end of the busy period, because what is over never matters to a question about the future: however many past
-- holds there are, none of them is looked at. And by its beginning, so that those that come later are passed over
-- without being unpacked.
create index hold_unit_to_come on hold_unit (house, microphone, upper(busy), lower(busy)) include (unit, hold, busy)
    where occupies;

create index hold_unit_of_house_to_come on hold_unit (house, upper(busy)) include (unit, hold, busy) where occupies;

create index hold_unit_overdue on hold_unit (house, microphone) include (unit, hold, busy)
    where out_at is not null and in_at is null;

-- An answer about what is free names the state of the kit that it rests on. The newest events stand for it, and more
-- than the last one, because an earlier transaction may commit later.
create function kit_revision() returns text language sql stable as $$
    select coalesce(max(id), 0) || '-' || left(md5(coalesce(string_agg(id::text, ',' order by id), '')), 8)
    from (select id from event order by tx desc, id desc limit 256) as newest
$$;
