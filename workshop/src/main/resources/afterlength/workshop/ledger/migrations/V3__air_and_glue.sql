-- Air and glue ---------------------------------------------------------------------------------------------------------------

-- history but for put_away: a logger file as it was taken in; the file itself lies in loggers/ under its SHA-256
CREATE TABLE air_file (
  id        INTEGER PRIMARY KEY,
  name      TEXT NOT NULL,
  sha256    TEXT NOT NULL,
  place     TEXT NOT NULL,
  row_count INTEGER NOT NULL CHECK (row_count >= 0),
  readings  INTEGER NOT NULL CHECK (readings > 0),
  from_s    INTEGER NOT NULL,
  to_s      INTEGER NOT NULL CHECK (to_s >= from_s),
  rejected  TEXT NOT NULL,
  notes     TEXT NOT NULL,
  put_away  INTEGER NOT NULL DEFAULT 0,
  hand      TEXT NOT NULL,
  taken_at  TEXT NOT NULL
) STRICT;

-- moments in seconds since 1970, since there may be a million of them
CREATE TABLE air_reading (
  at_s          INTEGER NOT NULL,
  file_id       INTEGER NOT NULL REFERENCES air_file,
  temperature_c REAL NOT NULL,
  humidity_pct  REAL NOT NULL,
  PRIMARY KEY (at_s, file_id)
) STRICT, WITHOUT ROWID;
CREATE TRIGGER air_reading_kept BEFORE UPDATE ON air_reading BEGIN SELECT RAISE(ABORT, 'history is kept: air_reading'); END;
CREATE TRIGGER air_reading_not_removed BEFORE DELETE ON air_reading BEGIN SELECT RAISE(ABORT, 'history is kept: air_reading'); END;
CREATE TRIGGER air_file_not_removed BEFORE DELETE ON air_file BEGIN SELECT RAISE(ABORT, 'history is kept: air_file'); END;

-- history: a batch of hot hide glue, and what became of it
CREATE TABLE glue_batch (
  id            INTEGER PRIMARY KEY,
  name          TEXT NOT NULL,
  strength_g    REAL CHECK (strength_g > 0),
  bloom_scale   TEXT NOT NULL CHECK (bloom_scale IN ('GLUE', 'GELATINE')),
  flakes        INTEGER NOT NULL,
  dry_g         REAL NOT NULL CHECK (dry_g > 0),
  water_g       REAL NOT NULL CHECK (water_g > 0),
  moisture_pct  REAL NOT NULL,
  remark        TEXT NOT NULL,
  hand          TEXT NOT NULL,
  made_at       TEXT NOT NULL
) STRICT;

CREATE TABLE glue_event (
  id            INTEGER PRIMARY KEY,
  batch_id      INTEGER NOT NULL REFERENCES glue_batch,
  what          TEXT NOT NULL CHECK (what IN ('SOAKING', 'WARMING', 'HOT', 'COLD', 'ENDED')),
  pot_c         REAL,
  due_at        TEXT,
  hand          TEXT NOT NULL,
  at            TEXT NOT NULL
) STRICT;
CREATE INDEX glue_event_of_batch ON glue_event (batch_id);

-- history: a joint glued from a batch, in the air of its moment
CREATE TABLE gluing (
  id            INTEGER PRIMARY KEY,
  replaces      INTEGER UNIQUE REFERENCES gluing,
  withdrawn     INTEGER NOT NULL DEFAULT 0,
  batch_id      INTEGER NOT NULL REFERENCES glue_batch,
  visit_id      INTEGER REFERENCES visit,
  joint         TEXT NOT NULL,
  used_g        REAL CHECK (used_g > 0),
  part_c        REAL,
  temperature_c REAL,
  humidity_pct  REAL,
  air_from      TEXT NOT NULL CHECK (air_from IN ('TYPED', 'LOGGER', 'NONE')),
  clamp_h       REAL CHECK (clamp_h > 0),
  remark        TEXT NOT NULL,
  hand          TEXT NOT NULL,
  at            TEXT NOT NULL,
  written_at    TEXT NOT NULL
) STRICT;
CREATE INDEX gluing_of_batch ON gluing (batch_id);
CREATE VIEW gluing_now AS
  SELECT g.* FROM gluing g WHERE g.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM gluing later WHERE later.replaces = g.id);
CREATE TRIGGER glue_batch_kept BEFORE UPDATE ON glue_batch BEGIN SELECT RAISE(ABORT, 'history is kept: glue_batch'); END;
CREATE TRIGGER glue_batch_not_removed BEFORE DELETE ON glue_batch BEGIN SELECT RAISE(ABORT, 'history is kept: glue_batch'); END;
CREATE TRIGGER glue_event_kept BEFORE UPDATE ON glue_event BEGIN SELECT RAISE(ABORT, 'history is kept: glue_event'); END;
CREATE TRIGGER glue_event_not_removed BEFORE DELETE ON glue_event BEGIN SELECT RAISE(ABORT, 'history is kept: glue_event'); END;
CREATE TRIGGER gluing_kept BEFORE UPDATE ON gluing BEGIN SELECT RAISE(ABORT, 'history is kept: gluing'); END;
CREATE TRIGGER gluing_not_removed BEFORE DELETE ON gluing BEGIN SELECT RAISE(ABORT, 'history is kept: gluing'); END;
