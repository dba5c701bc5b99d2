alter table house
    add column revision             bigint        not null default 1,
    add column stock_revision       bigint        not null default 1,
    add column currency             text          not null default 'EUR' check (currency ~ '^[A-Z]{3}$'),
    add column turn_round_min       integer       not null default 0 check (turn_round_min between 0 and 40320),
    add column hours                text          not null default '',
    add column drop_box             boolean       not null default false,
    add column weekend_days         numeric(3, 2) not null default 2 check (weekend_days between 0 and 2),
    add column minimum_charge_minor bigint        not null default 0 check (minimum_charge_minor >= 0);

comment on column house.revision is 'counts changes of its terms; their entity tag rests on it';
comment on column house.stock_revision is 'counts changes of its units; the entity tag of the whole kit rests on it';
comment on column house.currency is 'ISO 4217 code in which it charges';
comment on column house.turn_round_min is 'minutes between a return and the next collection';
comment on column house.hours is 'when it is open, in its own zone: mon 08:00-17:30, tue 08:00-17:30; empty: at all times';
comment on column house.drop_box is 'whether kit may come back outside opening hours; it is then checked in at the next opening';
comment on column house.weekend_days is 'days charged for a Saturday and the Sunday after it together';
comment on column house.minimum_charge_minor is 'least charge for a hold, in minor units of the currency';

create table unit (
    id             bigint generated always as identity primary key,
    house          text    not null references house,
    -- bytewise, so that a page of units begins where the one before ended, whatever the server speaks
    serial         text    collate "C" not null check (serial ~ '^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$'),
    microphone     text    not null,
    matched_group  text,
    state          text    not null check (state in ('available', 'in-repair', 'retired')),
    day_rate_minor bigint  not null check (day_rate_minor >= 0),
    note           text    not null default '',
    revision       bigint  not null default 1,
    unique (house, serial)
);

comment on table unit is 'one microphone with its serial number';
comment on column unit.microphone is 'the catalogue item that describes it';
comment on column unit.matched_group is 'units of a house with the same group were matched and leave together only';
comment on column unit.day_rate_minor is 'charge for a day, in minor units of the currency of its house';
