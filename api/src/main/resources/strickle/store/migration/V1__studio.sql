-- The same statements for SQLite and PostgreSQL. Moments are texts (ISO 8601, UTC), bodies are JSON.

create table studio (
  id varchar(36) not null primary key,
  name varchar(200) not null unique,
  -- Nothing when the studio is opened without a password.
  password_hash text,
  -- Goes up by one with every change, undo and redo.
  revision bigint not null,
  created_at varchar(40) not null
);

-- What a studio holds: the things of its book, and what has been noted beside it.
create table entry (
  studio_id varchar(36) not null references studio (id) on delete cascade,
  collection varchar(40) not null,
  id varchar(200) not null,
  position bigint not null,
  body text not null,
  primary key (studio_id, collection, id)
);

-- What was done, by whom and when. An undo or a redo is a line of its own that names another.
create table journal (
  studio_id varchar(36) not null references studio (id) on delete cascade,
  number bigint not null,
  at varchar(40) not null,
  who varchar(200) not null,
  what varchar(500) not null,
  kind varchar(10) not null,
  of_number bigint,
  state varchar(10) not null,
  primary key (studio_id, number)
);

-- What a line of the journal changed, thing by thing. No body before: it was created; none after: removed.
create table journal_change (
  studio_id varchar(36) not null,
  number bigint not null,
  ordinal bigint not null,
  collection varchar(40) not null,
  id varchar(200) not null,
  position_before bigint,
  body_before text,
  position_after bigint,
  body_after text,
  primary key (studio_id, number, ordinal),
  foreign key (studio_id, number) references journal (studio_id, number) on delete cascade
);

create table snapshot (
  studio_id varchar(36) not null references studio (id) on delete cascade,
  id varchar(36) not null,
  at varchar(40) not null,
  why varchar(200) not null,
  body text not null,
  primary key (studio_id, id)
);

-- Creations that were asked for with a key, so that asking twice creates once.
create table creation (
  studio_id varchar(36) not null references studio (id) on delete cascade,
  request_key varchar(200) not null,
  request_hash varchar(64) not null,
  reply text not null,
  at varchar(40) not null,
  primary key (studio_id, request_key)
);

-- Plans that were asked for. The book is kept as it was then; what comes of it is a plan of that book.
create table plan (
  studio_id varchar(36) not null references studio (id) on delete cascade,
  id varchar(36) not null,
  -- Counted from 1 in each studio, in the order in which they were asked for.
  number bigint not null,
  kind varchar(10) not null,
  state varchar(10) not null,
  created_at varchar(40) not null,
  changed_at varchar(40) not null,
  who varchar(200) not null,
  asked text not null,
  book text not null,
  -- The plan it begins from, when one is laid out anew.
  present text,
  -- Which attempt it is with, how many there were, and whether it shall end.
  runner varchar(36),
  attempts bigint not null,
  stop_asked bigint not null,
  progress text,
  totals text,
  thawed text,
  result text,
  why text,
  primary key (studio_id, id)
);

create index plan_by_number on plan (studio_id, number);

create table session (
  token_hash varchar(64) not null primary key,
  studio_id varchar(36) not null references studio (id) on delete cascade,
  created_at varchar(40) not null,
  ends_at varchar(40) not null
);
