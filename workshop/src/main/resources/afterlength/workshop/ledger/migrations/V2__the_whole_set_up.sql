-- The set-up with everything the bench knows of it: own crown, spacing string by string, and readings that may be missing.
-- Rows of version 1 keep their meaning: a crown of one radius, strings at equal distances, notes not told.

ALTER TABLE setup ADD COLUMN crown TEXT NOT NULL DEFAULT 'RADIUS' CHECK (crown IN ('RADIUS', 'TEMPLATE', 'EVEN_PLAY'));
-- the maker's own crown as it was typed: points, or a path
ALTER TABLE setup ADD COLUMN crown_template TEXT NOT NULL DEFAULT '';
ALTER TABLE setup ADD COLUMN spacing TEXT NOT NULL DEFAULT 'CENTRES' CHECK (spacing IN ('CENTRES', 'GAPS', 'GIVEN'));

ALTER TABLE setup_string ADD COLUMN note TEXT NOT NULL DEFAULT '';
ALTER TABLE setup_string ADD COLUMN linear_density_g_m REAL;
ALTER TABLE setup_string ADD COLUMN nut_y_mm REAL;
ALTER TABLE setup_string ADD COLUMN bridge_y_mm REAL;

-- history
CREATE TABLE setup_reading (
  setup_id INTEGER NOT NULL REFERENCES setup,
  reading  TEXT NOT NULL,
  value    REAL NOT NULL,
  PRIMARY KEY (setup_id, reading)
) STRICT;
CREATE TRIGGER setup_reading_kept BEFORE UPDATE ON setup_reading BEGIN SELECT RAISE(ABORT, 'history is kept: setup_reading'); END;
CREATE TRIGGER setup_reading_not_removed BEFORE DELETE ON setup_reading BEGIN SELECT RAISE(ABORT, 'history is kept: setup_reading'); END;

DROP VIEW setup_now;
CREATE VIEW setup_now AS
  SELECT s.* FROM setup s WHERE NOT EXISTS (SELECT 1 FROM setup later WHERE later.replaces = s.id);
