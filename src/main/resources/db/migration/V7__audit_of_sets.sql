-- The key as an expression and the actor once, because a kit of a hundred thousand units is one statement.
create or replace function audit_rows() returns trigger language plpgsql as $$
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
