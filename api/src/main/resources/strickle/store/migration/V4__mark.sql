-- Of each change a mark that no other has. Revisions count up from that of the file that is served: when
-- an older one is put in its place, they count the same numbers again for other contents. What was
-- there before gets the moment of its last change for a mark.
alter table studio add column mark varchar(40) not null default '';

update studio set mark = coalesce(
  (select j.at from journal j where j.studio_id = studio.id order by j.number desc limit 1),
  created_at);
