create table pack (
    id         text        primary key check (id ~ '^[a-z0-9]+(-[a-z0-9]+)*$'),
    house      text        not null references house,
    files      jsonb,
    revision   bigint      not null default 1,
    changed_at timestamptz not null default kit_now(),
    check (id = house or starts_with(id, house || '-'))
);

comment on table pack is 'catalogue packs that houses publish over the API';
comment on column pack.files is 'texts by their path in the pack; null where the house took it back';
comment on column pack.revision is 'counts its changes, taking back included; every instance follows by it';

-- Instances listen, and look every few seconds besides.
create function pack_changed() returns trigger language plpgsql as $$
begin
    perform pg_notify('pack_changed', '');
    return null;
end
$$;

create trigger pack_changed after insert or update on pack for each statement execute function pack_changed();

create trigger audit_insert after insert on pack referencing new table as new_rows
    for each statement execute function audit_rows('id');
create trigger audit_update after update on pack referencing old table as old_rows new table as new_rows
    for each statement execute function audit_rows('id');
