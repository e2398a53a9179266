CREATE TABLE "schema_history" (
    "installed_rank" INT NOT NULL PRIMARY KEY,
    "version" VARCHAR(50),
    "description" VARCHAR(200) NOT NULL,
    "type" VARCHAR(20) NOT NULL,
    "script" VARCHAR(1000) NOT NULL,
    "checksum" INT,
    "installed_by" VARCHAR(100) NOT NULL,
    "installed_on" TEXT NOT NULL DEFAULT (strftime('%Y-%m-%d %H:%M:%f','now')),
    "execution_time" INT NOT NULL,
    "success" BOOLEAN NOT NULL
);
CREATE TABLE setting (
  name  TEXT PRIMARY KEY,
  value TEXT NOT NULL
) STRICT;
CREATE TABLE owner (
  id      INTEGER PRIMARY KEY,
  name    TEXT NOT NULL,
  email   TEXT NOT NULL,
  phone   TEXT NOT NULL,
  address TEXT NOT NULL,
  remark  TEXT NOT NULL,
  version INTEGER NOT NULL DEFAULT 1
) STRICT;
CREATE TABLE instrument (
  id                 INTEGER PRIMARY KEY,
  owner_id           INTEGER NOT NULL REFERENCES owner,
  kind               TEXT NOT NULL,
  name               TEXT NOT NULL,
  size_words         TEXT NOT NULL,
  made_words         TEXT NOT NULL,
  label_words        TEXT NOT NULL,
  marks_words        TEXT NOT NULL,
  body_length_mm     REAL,
  story_told         TEXT NOT NULL,
  story_documented   TEXT NOT NULL,
  unplayed_since     INTEGER,
  version            INTEGER NOT NULL DEFAULT 1
) STRICT;
CREATE TABLE visit (
  id                  INTEGER PRIMARY KEY,
  instrument_id       INTEGER NOT NULL REFERENCES instrument,
  number              TEXT NOT NULL UNIQUE,
  received_on         TEXT NOT NULL,
  brought_by          TEXT NOT NULL,
  reason              TEXT NOT NULL,
  wish                TEXT NOT NULL,
  accessories         TEXT NOT NULL,
  condition_words     TEXT NOT NULL,
  insured_value_minor INTEGER,
  promised_on         TEXT,
  version             INTEGER NOT NULL DEFAULT 1
) STRICT;
CREATE TABLE photograph (
  id         INTEGER PRIMARY KEY,
  visit_id   INTEGER NOT NULL REFERENCES visit,
  sha256     TEXT NOT NULL,
  media_type TEXT NOT NULL,
  width_px   INTEGER NOT NULL,
  height_px  INTEGER NOT NULL,
  moment     TEXT NOT NULL CHECK (moment IN ('BEFORE', 'DURING', 'AFTER')),
  view       TEXT NOT NULL,
  caption    TEXT NOT NULL,
  added_at   TEXT NOT NULL,
  put_away   INTEGER NOT NULL DEFAULT 0
) STRICT;
CREATE TABLE finding (
  id              INTEGER PRIMARY KEY,
  visit_id        INTEGER NOT NULL REFERENCES visit,
  replaces        INTEGER UNIQUE REFERENCES finding,
  withdrawn       INTEGER NOT NULL DEFAULT 0,
  part            TEXT NOT NULL,
  kind            TEXT NOT NULL,
  place           TEXT NOT NULL,
  size_mm         REAL,
  size_plus_minus_mm REAL,
  size_reason     TEXT NOT NULL,
  age             TEXT NOT NULL CHECK (age IN ('FRESH', 'OLD', 'UNKNOWN')),
  hinders_playing TEXT NOT NULL CHECK (hinders_playing IN ('YES', 'NO', 'UNKNOWN')),
  gets_worse      TEXT NOT NULL CHECK (gets_worse IN ('YES', 'NO', 'UNKNOWN')),
  observation     TEXT NOT NULL,
  interpretation  TEXT NOT NULL,
  seen_at         TEXT NOT NULL,
  hand            TEXT NOT NULL,
  written_at      TEXT NOT NULL
) STRICT;
CREATE TABLE finding_photograph (
  finding_id    INTEGER NOT NULL REFERENCES finding,
  photograph_id INTEGER NOT NULL REFERENCES photograph,
  PRIMARY KEY (finding_id, photograph_id)
) STRICT;
CREATE TABLE measure (
  id            INTEGER PRIMARY KEY,
  visit_id      INTEGER NOT NULL REFERENCES visit,
  replaces      INTEGER UNIQUE REFERENCES measure,
  withdrawn     INTEGER NOT NULL DEFAULT 0,
  moment        TEXT NOT NULL CHECK (moment IN ('BEFORE', 'DURING', 'AFTER')),
  quantity      TEXT NOT NULL,
  value         REAL NOT NULL,
  unit          TEXT NOT NULL,
  plus_minus    REAL NOT NULL CHECK (plus_minus >= 0),
  method        TEXT NOT NULL,
  temperature_c REAL,
  humidity_pct  REAL,
  taken_at      TEXT NOT NULL,
  hand          TEXT NOT NULL,
  written_at    TEXT NOT NULL
) STRICT;
CREATE TABLE sitting (
  id            INTEGER PRIMARY KEY,
  visit_id      INTEGER NOT NULL REFERENCES visit,
  replaces      INTEGER UNIQUE REFERENCES sitting,
  withdrawn     INTEGER NOT NULL DEFAULT 0,
  means         TEXT NOT NULL,
  remark        TEXT NOT NULL,
  temperature_c REAL,
  humidity_pct  REAL,
  sat_at        TEXT NOT NULL,
  hand          TEXT NOT NULL,
  written_at    TEXT NOT NULL
) STRICT;
CREATE TABLE treatment (
  id             INTEGER PRIMARY KEY,
  visit_id       INTEGER NOT NULL REFERENCES visit,
  position       INTEGER NOT NULL,
  tier           TEXT NOT NULL CHECK (tier IN ('PLAYING_ORDER', 'SOUND', 'FULL')),
  title          TEXT NOT NULL,
  reason         TEXT NOT NULL,
  if_left        TEXT NOT NULL,
  undoing        TEXT NOT NULL CHECK (undoing IN ('YES', 'PARTLY', 'NO')),
  reversibility  TEXT NOT NULL,
  materials      TEXT NOT NULL,
  template       TEXT NOT NULL,
  minutes_low    INTEGER NOT NULL CHECK (minutes_low >= 0),
  minutes_high   INTEGER NOT NULL CHECK (minutes_high >= minutes_low),
  material_minor INTEGER NOT NULL CHECK (material_minor >= 0),
  put_away       INTEGER NOT NULL DEFAULT 0,
  version        INTEGER NOT NULL DEFAULT 1
) STRICT;
CREATE TABLE treatment_finding (
  treatment_id INTEGER NOT NULL REFERENCES treatment,
  finding_id   INTEGER NOT NULL REFERENCES finding,
  PRIMARY KEY (treatment_id, finding_id)
) STRICT;
CREATE TABLE agreement (
  id          INTEGER PRIMARY KEY,
  visit_id    INTEGER NOT NULL REFERENCES visit,
  replaces    INTEGER UNIQUE REFERENCES agreement,
  scope       TEXT NOT NULL,
  agreed_on   TEXT NOT NULL,
  agreed_by   TEXT NOT NULL,
  means       TEXT NOT NULL,
  low_minor      INTEGER NOT NULL,
  expected_minor INTEGER NOT NULL,
  high_minor     INTEGER NOT NULL,
  tax_permille   INTEGER NOT NULL,
  per_hour_minor INTEGER NOT NULL,
  ceiling_minor  INTEGER,
  promised_on TEXT,
  remark      TEXT NOT NULL,
  written_at  TEXT NOT NULL,
  hand        TEXT NOT NULL
) STRICT;
CREATE TABLE agreement_line (
  agreement_id INTEGER NOT NULL REFERENCES agreement,
  treatment_id INTEGER NOT NULL REFERENCES treatment,
  position     INTEGER NOT NULL,
  title        TEXT NOT NULL,
  accepted     INTEGER NOT NULL,
  low_minor      INTEGER NOT NULL,
  expected_minor INTEGER NOT NULL,
  high_minor     INTEGER NOT NULL,
  PRIMARY KEY (agreement_id, treatment_id)
) STRICT;
CREATE TABLE step (
  id               INTEGER PRIMARY KEY,
  visit_id         INTEGER NOT NULL REFERENCES visit,
  treatment_id     INTEGER REFERENCES treatment,
  position         INTEGER NOT NULL,
  name             TEXT NOT NULL,
  hands_low_min    INTEGER NOT NULL CHECK (hands_low_min >= 0),
  hands_typical_min INTEGER NOT NULL CHECK (hands_typical_min >= hands_low_min),
  hands_high_min   INTEGER NOT NULL CHECK (hands_high_min >= hands_typical_min),
  wait_low_h       REAL NOT NULL CHECK (wait_low_h >= 0),
  wait_typical_h   REAL NOT NULL CHECK (wait_typical_h >= wait_low_h),
  wait_high_h      REAL NOT NULL CHECK (wait_high_h >= wait_typical_h),
  needs            TEXT NOT NULL,
  blocks_instrument INTEGER NOT NULL,
  standing         TEXT NOT NULL DEFAULT 'IN_ORDER' CHECK (standing IN ('IN_ORDER', 'DROPPED_BY_HAND', 'DROPPED_BY_AGREEMENT')),
  version          INTEGER NOT NULL DEFAULT 1
) STRICT;
CREATE TABLE material (
  id              INTEGER PRIMARY KEY,
  name            TEXT NOT NULL,
  kind            TEXT NOT NULL,
  batch           TEXT NOT NULL,
  reversible_with TEXT NOT NULL,
  remark          TEXT NOT NULL,
  put_away        INTEGER NOT NULL DEFAULT 0,
  version         INTEGER NOT NULL DEFAULT 1
) STRICT;
CREATE TABLE diary_entry (
  id              INTEGER PRIMARY KEY,
  visit_id        INTEGER NOT NULL REFERENCES visit,
  step_id         INTEGER REFERENCES step,
  replaces        INTEGER UNIQUE REFERENCES diary_entry,
  withdrawn       INTEGER NOT NULL DEFAULT 0,
  what            TEXT NOT NULL CHECK (what IN ('STARTED', 'DONE', 'NOT_DRY', 'NOTE')),
  at              TEXT NOT NULL,
  minutes         INTEGER CHECK (minutes >= 0),
  more_hours      REAL CHECK (more_hours > 0),
  hand            TEXT NOT NULL,
  material        TEXT NOT NULL,
  reversible_with TEXT NOT NULL DEFAULT '',
  remark          TEXT NOT NULL,
  written_at      TEXT NOT NULL
) STRICT;
CREATE TABLE setup (
  id                      INTEGER PRIMARY KEY,
  visit_id                INTEGER NOT NULL REFERENCES visit,
  replaces                INTEGER UNIQUE REFERENCES setup,
  moment                  TEXT NOT NULL CHECK (moment IN ('BEFORE', 'AFTER')),
  speaking_length_mm      REAL NOT NULL,
  board_length_mm         REAL NOT NULL,
  board_radius_mm         REAL NOT NULL,
  nut_spacing_mm          REAL NOT NULL,
  bridge_spacing_mm       REAL NOT NULL,
  nut_clearance_bass_mm   REAL NOT NULL,
  nut_clearance_treble_mm REAL NOT NULL,
  clearance_bass_mm       REAL NOT NULL,
  clearance_treble_mm     REAL NOT NULL,
  clearance_convention    TEXT NOT NULL,
  projection_mm           REAL NOT NULL,
  groove_fraction         REAL NOT NULL,
  crown_radius_mm         REAL NOT NULL,
  saved_at                TEXT NOT NULL,
  hand                    TEXT NOT NULL
, crown TEXT NOT NULL DEFAULT 'RADIUS' CHECK (crown IN ('RADIUS', 'TEMPLATE', 'EVEN_PLAY')), crown_template TEXT NOT NULL DEFAULT '', spacing TEXT NOT NULL DEFAULT 'CENTRES' CHECK (spacing IN ('CENTRES', 'GAPS', 'GIVEN'))) STRICT;
CREATE TABLE setup_string (
  setup_id    INTEGER NOT NULL REFERENCES setup,
  position    INTEGER NOT NULL,
  name        TEXT NOT NULL,
  diameter_mm REAL NOT NULL,
  tension_n   REAL, note TEXT NOT NULL DEFAULT '', linear_density_g_m REAL, nut_y_mm REAL, bridge_y_mm REAL,
  PRIMARY KEY (setup_id, position)
) STRICT;
CREATE TABLE handover (
  id                INTEGER PRIMARY KEY,
  visit_id          INTEGER NOT NULL REFERENCES visit,
  replaces          INTEGER UNIQUE REFERENCES handover,
  handed_over_on    TEXT NOT NULL,
  received_by       TEXT NOT NULL,
  left_as_it_was    TEXT NOT NULL,
  care              TEXT NOT NULL,
  returned_parts    TEXT NOT NULL,
  next_check_on     TEXT,
  written_at        TEXT NOT NULL,
  hand              TEXT NOT NULL
) STRICT;
CREATE TABLE setup_reading (
  setup_id INTEGER NOT NULL REFERENCES setup,
  reading  TEXT NOT NULL,
  value    REAL NOT NULL,
  PRIMARY KEY (setup_id, reading)
) STRICT;
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
CREATE TABLE air_reading (
  at_s          INTEGER NOT NULL,
  file_id       INTEGER NOT NULL REFERENCES air_file,
  temperature_c REAL NOT NULL,
  humidity_pct  REAL NOT NULL,
  PRIMARY KEY (at_s, file_id)
) STRICT, WITHOUT ROWID;
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
CREATE TABLE mark (
  id                   INTEGER PRIMARY KEY,
  visit_id             INTEGER NOT NULL REFERENCES visit,
  replaces             INTEGER UNIQUE REFERENCES mark,
  withdrawn            INTEGER NOT NULL DEFAULT 0,
  photograph_id        INTEGER REFERENCES photograph,
  drawing              TEXT CHECK (drawing IN ('FRONT', 'BACK', 'SIDE', 'SCROLL')),
  finding_id           INTEGER REFERENCES finding,
  tool                 TEXT NOT NULL CHECK (tool IN ('CRACK', 'SEAM', 'WORN', 'OUTLINE', 'POINT')),
  selector             TEXT NOT NULL,
  arch                 TEXT NOT NULL CHECK (arch IN ('UNKNOWN', 'PLANE', 'EDGE', 'HALF', 'TOP')),
  height_mm            REAL,
  size_mm              REAL,
  size_plus_minus_mm   REAL,
  area_mm2             REAL,
  area_plus_minus_mm2  REAL,
  remark               TEXT NOT NULL,
  hand                 TEXT NOT NULL,
  written_at           TEXT NOT NULL,
  CHECK ((photograph_id IS NULL) <> (drawing IS NULL)),
  CHECK ((size_mm IS NULL) = (size_plus_minus_mm IS NULL)),
  CHECK ((area_mm2 IS NULL) = (area_plus_minus_mm2 IS NULL))
) STRICT;
CREATE TABLE card_print (
  id         INTEGER PRIMARY KEY,
  card       TEXT NOT NULL CHECK (card IN ('BODY', 'BODY_LETTER', 'POCKET')),
  level_mm   REAL NOT NULL,
  upright_mm REAL NOT NULL,
  written_at TEXT NOT NULL
) STRICT;
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
INSERT INTO "schema_history" VALUES (1, '1', 'the shop', 'SQL', 'V1__the_shop.sql', -98260311, '', '2026-11-28 01:12:10.070', 8, 1);
INSERT INTO "schema_history" VALUES (2, '2', 'the whole set up', 'SQL', 'V2__the_whole_set_up.sql', 760793329, '', '2026-11-28 01:12:10.088', 13, 1);
INSERT INTO "schema_history" VALUES (3, '3', 'air and glue', 'SQL', 'V3__air_and_glue.sql', 2729328, '', '2026-11-28 01:12:10.100', 2, 1);
INSERT INTO "schema_history" VALUES (4, '4', 'marks on pictures', 'SQL', 'V4__marks_on_pictures.sql', 1548338706, '', '2026-11-28 01:12:10.105', 1, 1);
INSERT INTO "schema_history" VALUES (5, '6', 'access', 'SQL', 'V6__access.sql', -1746140392, '', '2026-11-28 01:12:10.135', 1, 1);
INSERT INTO "owner" VALUES (1, 'n', '', '', '', '', 1);
INSERT INTO "instrument" VALUES (1, 1, 'VIOLA', 'n', '', '', '', '', NULL, '', '', NULL, 1);
INSERT INTO "visit" VALUES (1, 1, '2026-001', '2026-11-03', '', 'r', '', '', '', NULL, NULL, 1);
INSERT INTO "photograph" VALUES (1, 1, 'x', 'image/jpeg', 1, 1, 'BEFORE', '', '', '2026-11-03T10:00:00Z', 0);
INSERT INTO "finding" VALUES (1, 1, NULL, 0, 'belly', 'crack', '', NULL, NULL, '', 'OLD', 'NO', 'NO', 'o', '', '2026-11-03T10:00:00Z', 'h', '2026-11-03T10:00:00Z');
INSERT INTO "finding_photograph" VALUES (1, 1);
INSERT INTO "measure" VALUES (1, 1, NULL, 0, 'BEFORE', 'q', 1.5, 'mm', 0.1, '', NULL, NULL, '2026-11-03T10:00:00Z', 'h', '2026-11-03T10:00:00Z');
INSERT INTO "sitting" VALUES (1, 1, NULL, 0, 'daylight', '', NULL, NULL, '2026-11-03T10:00:00Z', 'h', '2026-11-03T10:00:00Z');
INSERT INTO "treatment" VALUES (1, 1, 1, 'SOUND', 't', '', '', 'YES', '', '', '', 1, 2, 0, 0, 1);
INSERT INTO "agreement" VALUES (1, 1, NULL, 's', '2026-11-03', 'n', 'm', 1, 2, 3, 0, 0, NULL, NULL, '', '2026-11-03T10:00:00Z', 'h');
INSERT INTO "agreement_line" VALUES (1, 1, 1, 't', 1, 1, 2, 3);
INSERT INTO "diary_entry" VALUES (1, 1, NULL, NULL, 0, 'NOTE', '2026-11-03T10:00:00Z', NULL, NULL, 'h', '', '', '', '2026-11-03T10:00:00Z');
INSERT INTO "setup" VALUES (1, 1, NULL, 'AFTER', 370.0, 300.0, 42.0, 17.0, 37.0, 0.5, 0.4, 6.0, 4.5, 'SQUARE', 32.0, 0.33, 42.0, '2026-11-03T10:00:00Z', 'h', 'RADIUS', '', 'CENTRES');
INSERT INTO "setup_string" VALUES (1, 0, 'C', 1.2, NULL, '', NULL, NULL, NULL);
INSERT INTO "handover" VALUES (1, 1, NULL, '2026-11-03', 'n', '', '', '', NULL, '2026-11-03T10:00:00Z', 'h');
INSERT INTO "setup_reading" VALUES (1, 'A4', 442.0);
INSERT INTO "mark" VALUES (1, 1, NULL, 0, 1, NULL, NULL, 'POINT', '<svg/>', 'EDGE', NULL, NULL, NULL, NULL, NULL, '', 'h', '2026-11-03T10:00:00Z');
INSERT INTO "card_print" VALUES (1, 'BODY', 100.0, 100.0, '2026-11-03T10:00:00Z');
CREATE INDEX "schema_history_s_idx" ON "schema_history" ("success");
CREATE INDEX instrument_of_owner ON instrument (owner_id);
CREATE INDEX visit_of_instrument ON visit (instrument_id);
CREATE INDEX photograph_of_visit ON photograph (visit_id);
CREATE INDEX finding_of_visit ON finding (visit_id);
CREATE INDEX measure_of_visit ON measure (visit_id);
CREATE INDEX sitting_of_visit ON sitting (visit_id);
CREATE INDEX treatment_of_visit ON treatment (visit_id);
CREATE INDEX agreement_of_visit ON agreement (visit_id);
CREATE INDEX step_of_visit ON step (visit_id);
CREATE INDEX diary_entry_of_visit ON diary_entry (visit_id);
CREATE INDEX diary_entry_of_step ON diary_entry (step_id);
CREATE INDEX setup_of_visit ON setup (visit_id);
CREATE INDEX handover_of_visit ON handover (visit_id);
CREATE TRIGGER finding_kept BEFORE UPDATE ON finding BEGIN SELECT RAISE(ABORT, 'history is kept: finding'); END;
CREATE TRIGGER finding_not_removed BEFORE DELETE ON finding BEGIN SELECT RAISE(ABORT, 'history is kept: finding'); END;
CREATE TRIGGER finding_photograph_kept BEFORE UPDATE ON finding_photograph BEGIN SELECT RAISE(ABORT, 'history is kept: finding_photograph'); END;
CREATE TRIGGER finding_photograph_not_removed BEFORE DELETE ON finding_photograph BEGIN SELECT RAISE(ABORT, 'history is kept: finding_photograph'); END;
CREATE TRIGGER measure_kept BEFORE UPDATE ON measure BEGIN SELECT RAISE(ABORT, 'history is kept: measure'); END;
CREATE TRIGGER measure_not_removed BEFORE DELETE ON measure BEGIN SELECT RAISE(ABORT, 'history is kept: measure'); END;
CREATE TRIGGER sitting_kept BEFORE UPDATE ON sitting BEGIN SELECT RAISE(ABORT, 'history is kept: sitting'); END;
CREATE TRIGGER sitting_not_removed BEFORE DELETE ON sitting BEGIN SELECT RAISE(ABORT, 'history is kept: sitting'); END;
CREATE TRIGGER agreement_kept BEFORE UPDATE ON agreement BEGIN SELECT RAISE(ABORT, 'history is kept: agreement'); END;
CREATE TRIGGER agreement_not_removed BEFORE DELETE ON agreement BEGIN SELECT RAISE(ABORT, 'history is kept: agreement'); END;
CREATE TRIGGER agreement_line_kept BEFORE UPDATE ON agreement_line BEGIN SELECT RAISE(ABORT, 'history is kept: agreement_line'); END;
CREATE TRIGGER agreement_line_not_removed BEFORE DELETE ON agreement_line BEGIN SELECT RAISE(ABORT, 'history is kept: agreement_line'); END;
CREATE TRIGGER diary_entry_kept BEFORE UPDATE ON diary_entry BEGIN SELECT RAISE(ABORT, 'history is kept: diary_entry'); END;
CREATE TRIGGER diary_entry_not_removed BEFORE DELETE ON diary_entry BEGIN SELECT RAISE(ABORT, 'history is kept: diary_entry'); END;
CREATE TRIGGER setup_kept BEFORE UPDATE ON setup BEGIN SELECT RAISE(ABORT, 'history is kept: setup'); END;
CREATE TRIGGER setup_not_removed BEFORE DELETE ON setup BEGIN SELECT RAISE(ABORT, 'history is kept: setup'); END;
CREATE TRIGGER setup_string_kept BEFORE UPDATE ON setup_string BEGIN SELECT RAISE(ABORT, 'history is kept: setup_string'); END;
CREATE TRIGGER setup_string_not_removed BEFORE DELETE ON setup_string BEGIN SELECT RAISE(ABORT, 'history is kept: setup_string'); END;
CREATE TRIGGER handover_kept BEFORE UPDATE ON handover BEGIN SELECT RAISE(ABORT, 'history is kept: handover'); END;
CREATE TRIGGER handover_not_removed BEFORE DELETE ON handover BEGIN SELECT RAISE(ABORT, 'history is kept: handover'); END;
CREATE VIEW finding_now AS
  SELECT f.* FROM finding f WHERE f.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM finding later WHERE later.replaces = f.id);
CREATE VIEW measure_now AS
  SELECT m.* FROM measure m WHERE m.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM measure later WHERE later.replaces = m.id);
CREATE VIEW sitting_now AS
  SELECT s.* FROM sitting s WHERE s.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM sitting later WHERE later.replaces = s.id);
CREATE VIEW agreement_now AS
  SELECT a.* FROM agreement a WHERE NOT EXISTS (SELECT 1 FROM agreement later WHERE later.replaces = a.id);
CREATE VIEW diary_entry_told AS
  WITH RECURSIVE told (id, first_id, first_written_at) AS (
    SELECT id, id, written_at FROM diary_entry WHERE replaces IS NULL
    UNION ALL SELECT d.id, t.first_id, t.first_written_at FROM diary_entry d JOIN told t ON d.replaces = t.id)
  SELECT d.*, t.first_id, t.first_written_at, coalesce(s.name, '') AS step_name
  FROM diary_entry d JOIN told t ON t.id = d.id LEFT JOIN step s ON s.id = d.step_id;
CREATE VIEW diary_entry_now AS
  SELECT d.* FROM diary_entry_told d
  WHERE d.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM diary_entry later WHERE later.replaces = d.id);
CREATE VIEW handover_now AS
  SELECT h.* FROM handover h WHERE NOT EXISTS (SELECT 1 FROM handover later WHERE later.replaces = h.id);
CREATE TRIGGER setup_reading_kept BEFORE UPDATE ON setup_reading BEGIN SELECT RAISE(ABORT, 'history is kept: setup_reading'); END;
CREATE TRIGGER setup_reading_not_removed BEFORE DELETE ON setup_reading BEGIN SELECT RAISE(ABORT, 'history is kept: setup_reading'); END;
CREATE VIEW setup_now AS
  SELECT s.* FROM setup s WHERE NOT EXISTS (SELECT 1 FROM setup later WHERE later.replaces = s.id);
CREATE TRIGGER air_reading_kept BEFORE UPDATE ON air_reading BEGIN SELECT RAISE(ABORT, 'history is kept: air_reading'); END;
CREATE TRIGGER air_reading_not_removed BEFORE DELETE ON air_reading BEGIN SELECT RAISE(ABORT, 'history is kept: air_reading'); END;
CREATE TRIGGER air_file_not_removed BEFORE DELETE ON air_file BEGIN SELECT RAISE(ABORT, 'history is kept: air_file'); END;
CREATE INDEX glue_event_of_batch ON glue_event (batch_id);
CREATE INDEX gluing_of_batch ON gluing (batch_id);
CREATE VIEW gluing_now AS
  SELECT g.* FROM gluing g WHERE g.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM gluing later WHERE later.replaces = g.id);
CREATE TRIGGER glue_batch_kept BEFORE UPDATE ON glue_batch BEGIN SELECT RAISE(ABORT, 'history is kept: glue_batch'); END;
CREATE TRIGGER glue_batch_not_removed BEFORE DELETE ON glue_batch BEGIN SELECT RAISE(ABORT, 'history is kept: glue_batch'); END;
CREATE TRIGGER glue_event_kept BEFORE UPDATE ON glue_event BEGIN SELECT RAISE(ABORT, 'history is kept: glue_event'); END;
CREATE TRIGGER glue_event_not_removed BEFORE DELETE ON glue_event BEGIN SELECT RAISE(ABORT, 'history is kept: glue_event'); END;
CREATE TRIGGER gluing_kept BEFORE UPDATE ON gluing BEGIN SELECT RAISE(ABORT, 'history is kept: gluing'); END;
CREATE TRIGGER gluing_not_removed BEFORE DELETE ON gluing BEGIN SELECT RAISE(ABORT, 'history is kept: gluing'); END;
CREATE INDEX mark_of_photograph ON mark (photograph_id);
CREATE INDEX mark_of_visit ON mark (visit_id);
CREATE VIEW mark_now AS
  SELECT m.* FROM mark m WHERE m.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM mark later WHERE later.replaces = m.id);
CREATE TRIGGER mark_kept BEFORE UPDATE ON mark BEGIN SELECT RAISE(ABORT, 'history is kept: mark'); END;
CREATE TRIGGER mark_not_removed BEFORE DELETE ON mark BEGIN SELECT RAISE(ABORT, 'history is kept: mark'); END;
CREATE TRIGGER card_print_kept BEFORE UPDATE ON card_print BEGIN SELECT RAISE(ABORT, 'history is kept: card_print'); END;
CREATE TRIGGER card_print_not_removed BEFORE DELETE ON card_print BEGIN SELECT RAISE(ABORT, 'history is kept: card_print'); END;
CREATE INDEX access_study_of_finding ON access_study (finding_id);
CREATE TRIGGER access_study_kept BEFORE UPDATE ON access_study BEGIN SELECT RAISE(ABORT, 'history is kept: access_study'); END;
CREATE TRIGGER access_study_not_removed BEFORE DELETE ON access_study BEGIN SELECT RAISE(ABORT, 'history is kept: access_study'); END;
CREATE VIEW access_study_now AS
  SELECT s.* FROM access_study s WHERE NOT EXISTS (SELECT 1 FROM access_study later WHERE later.replaces = s.id);
PRAGMA user_version = 6;
