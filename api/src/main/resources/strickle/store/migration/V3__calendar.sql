-- The secret address under which a calendar program reads the plan in use without a session. Of the
-- secret only the SHA-256 is kept; another in its place ends the one before.
create table calendar_address (
  studio_id varchar(36) not null primary key references studio (id) on delete cascade,
  secret_hash varchar(64) not null unique,
  created_at varchar(40) not null
);
