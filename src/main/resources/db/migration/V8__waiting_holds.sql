drop function expire_due();

-- Lets the holds of a state fall that are due, by the clock of the database, and tells whose units fell free. Those that
-- wait have no units, and go last, on their own: their rows are locked after the models of the units, all others before.
create function expire_due(due_state text) returns table (house text, microphone text) language sql as $$
    with due as (
        select id from hold
        -- both states as well, or the index of what is due would not be used
        where state in ('waiting', 'tentative') and state = due_state and expires_at <= kit_now()
        order by made_at, id
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
