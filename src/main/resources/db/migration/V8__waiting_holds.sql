-- Lets every hold fall that has units and is due, by the clock of the database, and tells whose units fell free.
create or replace function expire_due() returns table (house text, microphone text) language sql as $$
    with due as (
        select id from hold
        where state = 'tentative' and expires_at <= kit_now()
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

-- Lets those fall that waited until their period began; they have no units.
create function expire_waiting() returns bigint language sql as $$
    with due as (
        select id from hold
        where state = 'waiting' and expires_at <= kit_now()
        order by made_at, id
        for update
    ), fallen as (
        update hold set state = 'expired', changed_at = kit_now(), revision = revision + 1
        from due where hold.id = due.id
        returning hold.id
    )
    select count(*) from fallen
$$;
