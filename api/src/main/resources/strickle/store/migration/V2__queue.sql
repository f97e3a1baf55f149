-- The queue of plans, as the library db-scheduler wants it. SQLite takes any name for a type.
create table scheduled_tasks (
  task_name varchar(100) not null,
  task_instance varchar(100) not null,
  task_data bytea,
  execution_time timestamptz,
  picked boolean not null,
  picked_by varchar(50),
  last_success timestamptz,
  last_failure timestamptz,
  consecutive_failures int,
  last_heartbeat timestamptz,
  version bigint not null,
  priority smallint,
  state text,
  primary key (task_name, task_instance)
);

create index execution_time_idx on scheduled_tasks (execution_time);

create index last_heartbeat_idx on scheduled_tasks (last_heartbeat);
