-- The first writing of a diary entry stands in each of its later writings, so that no page has to walk through all diaries for it.
ALTER TABLE diary_entry ADD COLUMN first_id INTEGER REFERENCES diary_entry;
ALTER TABLE diary_entry ADD COLUMN first_written_at TEXT;

DROP TRIGGER diary_entry_kept;
WITH RECURSIVE told (id, first_id, first_written_at) AS (
  SELECT id, id, written_at FROM diary_entry WHERE replaces IS NULL
  UNION ALL SELECT d.id, t.first_id, t.first_written_at FROM diary_entry d JOIN told t ON d.replaces = t.id)
UPDATE diary_entry SET first_id = t.first_id, first_written_at = t.first_written_at
FROM told t WHERE t.id = diary_entry.id AND diary_entry.replaces IS NOT NULL;
CREATE TRIGGER diary_entry_kept BEFORE UPDATE ON diary_entry BEGIN SELECT RAISE(ABORT, 'history is kept: diary_entry'); END;

DROP VIEW diary_entry_now;
DROP VIEW diary_entry_told;
-- A diary entry with the first writing of the same entry: a correction keeps its place among entries of the same second, and
-- whether it was written late is told by the first.
CREATE VIEW diary_entry_told AS
  SELECT d.id, d.visit_id, d.step_id, d.replaces, d.withdrawn, d.what, d.at, d.minutes, d.more_hours, d.hand, d.material,
    d.reversible_with, d.remark, d.written_at, coalesce(d.first_id, d.id) AS first_id,
    coalesce(d.first_written_at, d.written_at) AS first_written_at, coalesce(s.name, '') AS step_name
  FROM diary_entry d LEFT JOIN step s ON s.id = d.step_id;
CREATE VIEW diary_entry_now AS
  SELECT d.* FROM diary_entry_told d
  WHERE d.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM diary_entry later WHERE later.replaces = d.id);
