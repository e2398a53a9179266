-- Clamps that work through a sound-hole, as they stand on the shelf; working copies, measured anew when a jaw is changed.
CREATE TABLE clamp (
  id                INTEGER PRIMARY KEY,
  name              TEXT NOT NULL CHECK (trim(name) <> ''),
  throat_mm         REAL NOT NULL,
  jaw_length_mm     REAL NOT NULL,
  jaw_width_mm      REAL NOT NULL,
  jaw_height_mm     REAL NOT NULL,
  arm_mm            REAL NOT NULL,
  arm_width_mm      REAL NOT NULL,
  put_away          INTEGER NOT NULL DEFAULT 0 CHECK (put_away IN (0, 1))
) STRICT;

-- How a crack is reached: hole and crack as traced, the cleats, what was seen and what was chosen.
CREATE TABLE access_study (
  id                INTEGER PRIMARY KEY,
  finding_id        INTEGER NOT NULL REFERENCES finding,
  replaces          INTEGER UNIQUE REFERENCES access_study,
  outline           TEXT NOT NULL,
  crack             TEXT NOT NULL,
  plate_mm          REAL NOT NULL,
  depth_mm          REAL NOT NULL,
  cleat_length_mm   REAL NOT NULL,
  cleat_width_mm    REAL NOT NULL,
  cleat_thickness_mm REAL NOT NULL,
  shape             TEXT NOT NULL,
  grain             TEXT NOT NULL,
  spacing_mm        REAL NOT NULL,
  to_ends_mm        REAL NOT NULL,
  clamp_id          INTEGER REFERENCES clamp,
  under_post        INTEGER NOT NULL CHECK (under_post IN (0, 1)),
  under_bar         INTEGER NOT NULL CHECK (under_bar IN (0, 1)),
  step_mm           REAL NOT NULL,
  closes_dry        INTEGER NOT NULL CHECK (closes_dry IN (0, 1)),
  cleanable         INTEGER NOT NULL CHECK (cleanable IN (0, 1)),
  chosen            TEXT NOT NULL,
  hand              TEXT NOT NULL,
  written_at        TEXT NOT NULL
) STRICT;
CREATE INDEX access_study_of_finding ON access_study (finding_id);

CREATE TRIGGER access_study_kept BEFORE UPDATE ON access_study BEGIN SELECT RAISE(ABORT, 'history is kept: access_study'); END;
CREATE TRIGGER access_study_not_removed BEFORE DELETE ON access_study BEGIN SELECT RAISE(ABORT, 'history is kept: access_study'); END;

CREATE VIEW access_study_now AS
  SELECT s.* FROM access_study s WHERE NOT EXISTS (SELECT 1 FROM access_study later WHERE later.replaces = s.id);
