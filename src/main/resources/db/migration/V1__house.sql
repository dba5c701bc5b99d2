create table house (
    id    text primary key check (id ~ '^[a-z0-9][a-z0-9-]*$'),
    title text not null,
    zone  text not null
);

comment on table house is 'who owns microphones and lends them';
comment on column house.zone is 'IANA name of the time zone in which its days begin and end';
