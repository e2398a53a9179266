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
, first_id INTEGER REFERENCES diary_entry, first_written_at TEXT) STRICT;
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
, number INTEGER NOT NULL DEFAULT 1) STRICT;
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
, grain_line_deg REAL NOT NULL DEFAULT 90, bar TEXT NOT NULL DEFAULT '', bar_mm REAL NOT NULL DEFAULT 6, post TEXT NOT NULL DEFAULT '', post_mm REAL NOT NULL DEFAULT 6, lining TEXT NOT NULL DEFAULT '', lining_mm REAL NOT NULL DEFAULT 3, photograph_id INTEGER REFERENCES photograph, photograph_height_mm REAL NOT NULL DEFAULT 0) STRICT;
CREATE TABLE palette_colour (
  id                 INTEGER PRIMARY KEY,
  name               TEXT NOT NULL,
  medium             TEXT NOT NULL,
  reversible_with    TEXT NOT NULL,
  colour_class       TEXT NOT NULL,
  spectral           INTEGER NOT NULL,
  absorption         TEXT NOT NULL,
  scatter            TEXT NOT NULL,
  largest_difference REAL NOT NULL,
  put_away           INTEGER NOT NULL DEFAULT 0,
  written_at         TEXT NOT NULL,
  hand               TEXT NOT NULL
) STRICT;
CREATE TABLE palette_film (
  colour_id  INTEGER NOT NULL REFERENCES palette_colour,
  position   INTEGER NOT NULL,
  coats      REAL NOT NULL CHECK (coats > 0),
  ground     TEXT NOT NULL,
  film       TEXT NOT NULL,
  difference REAL NOT NULL,
  PRIMARY KEY (colour_id, position)
) STRICT;
CREATE TABLE retouch (
  id              INTEGER PRIMARY KEY,
  visit_id        INTEGER NOT NULL REFERENCES visit,
  replaces        INTEGER UNIQUE REFERENCES retouch,
  withdrawn       INTEGER NOT NULL DEFAULT 0,
  finding_id      INTEGER REFERENCES finding,
  place           TEXT NOT NULL,
  ground_class    TEXT NOT NULL,
  ground_spectral INTEGER NOT NULL,
  ground          TEXT NOT NULL,
  target_class    TEXT NOT NULL,
  target_spectral INTEGER NOT NULL,
  target          TEXT NOT NULL,
  colorants       INTEGER NOT NULL CHECK (colorants BETWEEN 1 AND 3),
  film_coats      REAL NOT NULL CHECK (film_coats > 0),
  written_at      TEXT NOT NULL,
  hand            TEXT NOT NULL
) STRICT;
CREATE TABLE retouch_colour (
  retouch_id INTEGER NOT NULL REFERENCES retouch,
  colour_id  INTEGER NOT NULL REFERENCES palette_colour,
  PRIMARY KEY (retouch_id, colour_id)
) STRICT;
CREATE TABLE retouch_coat (
  id              INTEGER PRIMARY KEY,
  retouch_id      INTEGER NOT NULL REFERENCES retouch,
  diary_id        INTEGER NOT NULL REFERENCES diary_entry,
  isolating       TEXT NOT NULL,
  reversible_with TEXT NOT NULL,
  laid_at         TEXT NOT NULL,
  hand            TEXT NOT NULL
) STRICT;
CREATE TABLE retouch_coat_part (
  coat_id   INTEGER NOT NULL REFERENCES retouch_coat,
  colour_id INTEGER NOT NULL REFERENCES palette_colour,
  coats     REAL NOT NULL CHECK (coats > 0),
  PRIMARY KEY (coat_id, colour_id)
) STRICT;
CREATE TABLE retouch_reading (
  id           INTEGER PRIMARY KEY,
  coat_id      INTEGER NOT NULL REFERENCES retouch_coat,
  colour_class TEXT NOT NULL,
  spectral     INTEGER NOT NULL,
  colour       TEXT NOT NULL,
  written_at   TEXT NOT NULL,
  hand         TEXT NOT NULL
) STRICT;
CREATE TABLE varnish (
  id       INTEGER PRIMARY KEY,
  name     TEXT NOT NULL,
  made_on  TEXT,
  remark   TEXT NOT NULL,
  put_away INTEGER NOT NULL DEFAULT 0,
  written_at TEXT NOT NULL,
  hand     TEXT NOT NULL
) STRICT;
CREATE TABLE varnish_part (
  varnish_id    INTEGER NOT NULL REFERENCES varnish,
  position      INTEGER NOT NULL,
  name          TEXT NOT NULL,
  mass_g        REAL NOT NULL CHECK (mass_g > 0),
  density_kg_m3 REAL NOT NULL CHECK (density_kg_m3 > 0),
  part          TEXT NOT NULL CHECK (part IN ('OIL', 'RESIN', 'OTHER_SOLID', 'SOLVENT')),
  PRIMARY KEY (varnish_id, position)
) STRICT;
CREATE TABLE varnish_coat (
  id            INTEGER PRIMARY KEY,
  varnish_id    INTEGER NOT NULL REFERENCES varnish,
  replaces      INTEGER UNIQUE REFERENCES varnish_coat,
  withdrawn     INTEGER NOT NULL DEFAULT 0,
  laid_on       TEXT NOT NULL,
  touch_dry_h   REAL NOT NULL CHECK (touch_dry_h > 0),
  temperature_c REAL NOT NULL,
  humidity_pct  REAL NOT NULL,
  remark        TEXT NOT NULL,
  written_at    TEXT NOT NULL,
  hand          TEXT NOT NULL
) STRICT;
CREATE TABLE varnish_area (
  id             INTEGER PRIMARY KEY,
  visit_id       INTEGER NOT NULL REFERENCES visit,
  finding_id     INTEGER NOT NULL REFERENCES finding,
  varnish_id     INTEGER NOT NULL REFERENCES varnish,
  replaces       INTEGER UNIQUE REFERENCES varnish_area,
  withdrawn      INTEGER NOT NULL DEFAULT 0,
  area_cm2       REAL NOT NULL CHECK (area_cm2 > 0),
  plus_minus_cm2 REAL NOT NULL CHECK (plus_minus_cm2 > 0),
  dry_um         REAL NOT NULL CHECK (dry_um > 0),
  wet_coat_um    REAL NOT NULL CHECK (wet_coat_um > 0),
  written_at     TEXT NOT NULL,
  hand           TEXT NOT NULL
) STRICT;
CREATE TABLE tablet (
  id            INTEGER PRIMARY KEY,
  name          TEXT NOT NULL CHECK (trim(name) <> ''),
  secret_sha256 TEXT NOT NULL UNIQUE,
  paired_at     TEXT NOT NULL,
  seen_at       TEXT NOT NULL,
  shut_out_at   TEXT
) STRICT;
CREATE TABLE erasing (
  id        INTEGER PRIMARY KEY,
  owner_id  INTEGER NOT NULL REFERENCES owner,
  texts     INTEGER NOT NULL CHECK (texts >= 0),
  pictures  INTEGER NOT NULL CHECK (pictures >= 0),
  erased_at TEXT NOT NULL,
  hand      TEXT NOT NULL
) STRICT;
CREATE TABLE mended_line (
  id         INTEGER PRIMARY KEY,
  visit_id   INTEGER NOT NULL REFERENCES visit,
  replaces   INTEGER UNIQUE REFERENCES mended_line,
  withdrawn  INTEGER NOT NULL DEFAULT 0,
  place      TEXT NOT NULL,
  written_at TEXT NOT NULL,
  hand       TEXT NOT NULL
) STRICT;
CREATE TABLE mended_line_sight (
  line_id       INTEGER NOT NULL REFERENCES mended_line,
  moment        TEXT NOT NULL CHECK (moment IN ('BEFORE', 'AFTER')),
  mark_id       INTEGER NOT NULL REFERENCES mark,
  high          REAL NOT NULL,
  plus_minus    REAL NOT NULL CHECK (plus_minus > 0),
  mean          REAL NOT NULL,
  control       REAL NOT NULL,
  share_above   REAL NOT NULL CHECK (share_above BETWEEN 0 AND 1),
  pixels_per_mm REAL NOT NULL,
  across        TEXT NOT NULL,
  untouched     TEXT NOT NULL,
  caveats       TEXT NOT NULL,
  PRIMARY KEY (line_id, moment)
) STRICT;
CREATE TABLE sent_once (
  sent_key    TEXT PRIMARY KEY,
  answer      TEXT NOT NULL,
  received_at TEXT NOT NULL
) STRICT;
CREATE TABLE card_in_photograph (
  id            INTEGER PRIMARY KEY,
  photograph_id INTEGER NOT NULL REFERENCES photograph,
  number        INTEGER NOT NULL,
  written_at    TEXT NOT NULL
) STRICT;
CREATE TABLE invoice (
  id            INTEGER PRIMARY KEY,
  visit_id      INTEGER NOT NULL REFERENCES visit,
  credits       INTEGER UNIQUE REFERENCES invoice,
  agreement_id  INTEGER REFERENCES agreement,
  year          INTEGER NOT NULL,
  serial        INTEGER NOT NULL,
  issued_on     TEXT NOT NULL,
  supplied_on   TEXT NOT NULL,
  seller        TEXT NOT NULL,
  seller_tax_id TEXT NOT NULL,
  buyer         TEXT NOT NULL,
  subject       TEXT NOT NULL,
  currency      TEXT NOT NULL,
  rounding      TEXT NOT NULL CHECK (rounding IN ('PER_LINE', 'PER_TOTAL')),
  net_minor     INTEGER NOT NULL,
  tax_minor     INTEGER NOT NULL,
  total_minor   INTEGER NOT NULL CHECK (total_minor = net_minor + tax_minor),
  paid_minor    INTEGER NOT NULL CHECK (paid_minor >= 0),
  terms         TEXT NOT NULL,
  no_tax_reason TEXT NOT NULL,
  remark        TEXT NOT NULL,
  written_at    TEXT NOT NULL,
  hand          TEXT NOT NULL,
  UNIQUE (year, serial)
) STRICT;
CREATE TABLE invoice_line (
  invoice_id   INTEGER NOT NULL REFERENCES invoice,
  position     INTEGER NOT NULL,
  treatment_id INTEGER REFERENCES treatment,
  title        TEXT NOT NULL,
  minutes      INTEGER CHECK (minutes >= 0),
  net_minor    INTEGER NOT NULL,
  tax_permille INTEGER NOT NULL CHECK (tax_permille BETWEEN 0 AND 1000),
  PRIMARY KEY (invoice_id, position)
) STRICT;
CREATE TABLE advice_decision (
  id         INTEGER PRIMARY KEY,
  visit_id   INTEGER NOT NULL REFERENCES visit,
  finding_id INTEGER NOT NULL REFERENCES finding,
  replaces   INTEGER UNIQUE REFERENCES advice_decision,
  treatment  TEXT NOT NULL,
  title      TEXT NOT NULL,
  reason     TEXT NOT NULL,
  hand       TEXT NOT NULL,
  written_at TEXT NOT NULL
) STRICT;
CREATE TABLE closing_tick (
  id         INTEGER PRIMARY KEY,
  visit_id   INTEGER NOT NULL REFERENCES visit,
  thing      TEXT NOT NULL,
  title      TEXT NOT NULL,
  done       INTEGER NOT NULL,
  note       TEXT NOT NULL,
  hand       TEXT NOT NULL,
  written_at TEXT NOT NULL
) STRICT;
CREATE TABLE bench_plan (
  id         INTEGER PRIMARY KEY,
  replaces   INTEGER UNIQUE REFERENCES bench_plan,
  because    TEXT NOT NULL,
  hand       TEXT NOT NULL,
  written_at TEXT NOT NULL
) STRICT;
CREATE TABLE bench_plan_piece (
  plan_id   INTEGER NOT NULL REFERENCES bench_plan,
  step_id   INTEGER NOT NULL REFERENCES step,
  part      INTEGER NOT NULL CHECK (part >= 0),
  start     TEXT NOT NULL,
  hands_end TEXT NOT NULL,
  end       TEXT NOT NULL,
  hand      TEXT NOT NULL,
  PRIMARY KEY (plan_id, step_id, part)
) STRICT;
CREATE TABLE bench_plan_visit (
  plan_id         INTEGER NOT NULL REFERENCES bench_plan,
  visit_id        INTEGER NOT NULL REFERENCES visit,
  ready_at        TEXT NOT NULL,
  promised_before TEXT,
  promised_on     TEXT,
  PRIMARY KEY (plan_id, visit_id)
) STRICT;
CREATE TABLE absence (
  id         INTEGER PRIMARY KEY,
  replaces   INTEGER UNIQUE REFERENCES absence,
  withdrawn  INTEGER NOT NULL DEFAULT 0,
  away       TEXT NOT NULL,
  from_day   TEXT NOT NULL,
  to_day     TEXT NOT NULL CHECK (to_day >= from_day),
  reason     TEXT NOT NULL,
  hand       TEXT NOT NULL,
  written_at TEXT NOT NULL
) STRICT;
CREATE TABLE visit_urgency (
  id         INTEGER PRIMARY KEY,
  replaces   INTEGER UNIQUE REFERENCES visit_urgency,
  visit_id   INTEGER NOT NULL REFERENCES visit,
  urgency    TEXT NOT NULL CHECK (urgency IN ('ORDINARY', 'SOON', 'URGENT')),
  hand       TEXT NOT NULL,
  written_at TEXT NOT NULL
) STRICT;
CREATE TABLE practice_time (
  id                INTEGER PRIMARY KEY,
  replaces          INTEGER UNIQUE REFERENCES practice_time,
  withdrawn         INTEGER NOT NULL DEFAULT 0,
  template          TEXT NOT NULL,
  step              TEXT NOT NULL,
  hands_low_min     REAL NOT NULL CHECK (hands_low_min >= 0),
  hands_typical_min REAL NOT NULL CHECK (hands_typical_min >= hands_low_min),
  hands_high_min    REAL NOT NULL CHECK (hands_high_min >= hands_typical_min),
  wait_low_h        REAL NOT NULL CHECK (wait_low_h >= 0),
  wait_typical_h    REAL NOT NULL CHECK (wait_typical_h >= wait_low_h),
  wait_high_h       REAL NOT NULL CHECK (wait_high_h >= wait_typical_h),
  hand              TEXT NOT NULL,
  written_at        TEXT NOT NULL
) STRICT;
INSERT INTO "schema_history" VALUES (1, '1', 'the shop', 'SQL', 'V1__the_shop.sql', -98260311, '', '2026-12-01 03:10:18.478', 26, 1);
INSERT INTO "schema_history" VALUES (2, '2', 'the whole set up', 'SQL', 'V2__the_whole_set_up.sql', 760793329, '', '2026-12-01 03:10:18.511', 8, 1);
INSERT INTO "schema_history" VALUES (3, '3', 'air and glue', 'SQL', 'V3__air_and_glue.sql', 2729328, '', '2026-12-01 03:10:18.535', 4, 1);
INSERT INTO "schema_history" VALUES (4, '4', 'marks on pictures', 'SQL', 'V4__marks_on_pictures.sql', 1548338706, '', '2026-12-01 03:10:18.556', 5, 1);
INSERT INTO "schema_history" VALUES (5, '6', 'access', 'SQL', 'V6__access.sql', -1746140392, '', '2026-12-01 03:10:18.582', 6, 1);
INSERT INTO "schema_history" VALUES (6, '7', 'varnish and retouch', 'SQL', 'V7__varnish_and_retouch.sql', 964962711, '', '2026-12-01 03:10:18.617', 12, 1);
INSERT INTO "schema_history" VALUES (7, '8', 'first writing', 'SQL', 'V8__first_writing.sql', 1380100270, '', '2026-12-01 03:10:18.644', 11, 1);
INSERT INTO "schema_history" VALUES (8, '9', 'tablets', 'SQL', 'V9__tablets.sql', 1982025247, '', '2026-12-01 03:10:18.658', 5, 1);
INSERT INTO "schema_history" VALUES (9, '10', 'erasing', 'SQL', 'V10__erasing.sql', -620336760, '', '2026-12-01 03:10:18.670', 4, 1);
INSERT INTO "schema_history" VALUES (10, '11', 'mended lines and late taps', 'SQL', 'V11__mended_lines_and_late_taps.sql', 1046994465, '', '2026-12-01 03:10:18.679', 2, 1);
INSERT INTO "schema_history" VALUES (11, '12', 'photographs measured on', 'SQL', 'V12__photographs_measured_on.sql', -662170000, '', '2026-12-01 03:10:18.731', 25, 1);
INSERT INTO "schema_history" VALUES (12, '13', 'bills and decisions', 'SQL', 'V13__bills_and_decisions.sql', 1669290428, '', '2026-12-01 03:10:18.754', 7, 1);
INSERT INTO "schema_history" VALUES (13, '14', 'bench plan', 'SQL', 'V14__bench_plan.sql', 581730057, '', '2026-12-01 03:10:18.771', 11, 1);
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
INSERT INTO "step" VALUES (1, 1, NULL, 1, 's', 1, 2, 3, 0.0, 0.0, 0.0, '', 0, 'IN_ORDER', 1);
INSERT INTO "diary_entry" VALUES (1, 1, NULL, NULL, 0, 'NOTE', '2026-11-03T10:00:00Z', NULL, NULL, 'h', '', '', '', '2026-11-03T10:00:00Z', NULL, NULL);
INSERT INTO "setup" VALUES (1, 1, NULL, 'AFTER', 370.0, 300.0, 42.0, 17.0, 37.0, 0.5, 0.4, 6.0, 4.5, 'SQUARE', 32.0, 0.33, 42.0, '2026-11-03T10:00:00Z', 'h', 'RADIUS', '', 'CENTRES');
INSERT INTO "setup_string" VALUES (1, 0, 'C', 1.2, NULL, '', NULL, NULL, NULL);
INSERT INTO "handover" VALUES (1, 1, NULL, '2026-11-03', 'n', '', '', '', NULL, '2026-11-03T10:00:00Z', 'h');
INSERT INTO "setup_reading" VALUES (1, 'A4', 442.0);
INSERT INTO "mark" VALUES (1, 1, NULL, 0, 1, NULL, NULL, 'POINT', '<svg/>', 'EDGE', NULL, NULL, NULL, NULL, NULL, '', 'h', '2026-11-03T10:00:00Z');
INSERT INTO "card_print" VALUES (1, 'BODY', 100.0, 100.0, '2026-11-03T10:00:00Z', 1);
INSERT INTO "palette_colour" VALUES (1, 'n', '', '', 'INSTRUMENT', 1, '', '', 0.0, 0, '2026-11-03T10:00:00Z', 'h');
INSERT INTO "palette_film" VALUES (1, 0, 1.0, '', '', 0.0);
INSERT INTO "retouch" VALUES (1, 1, NULL, 0, NULL, 'p', 'INSTRUMENT', 1, '', 'INSTRUMENT', 1, '', 3, 3.0, '2026-11-03T10:00:00Z', 'h');
INSERT INTO "retouch_colour" VALUES (1, 1);
INSERT INTO "retouch_coat" VALUES (1, 1, 1, '', '', '2026-11-03T10:00:00Z', 'h');
INSERT INTO "retouch_coat_part" VALUES (1, 1, 0.5);
INSERT INTO "retouch_reading" VALUES (1, 1, 'INSTRUMENT', 1, '', '2026-11-03T10:00:00Z', 'h');
INSERT INTO "varnish" VALUES (1, 'n', NULL, '', 0, '2026-11-03T10:00:00Z', 'h');
INSERT INTO "varnish_part" VALUES (1, 0, 'oil', 10.0, 930.0, 'OIL');
INSERT INTO "varnish_coat" VALUES (1, 1, NULL, 0, '2026-11-03', 5.0, 20.0, 50.0, '', '2026-11-03T10:00:00Z', 'h');
INSERT INTO "varnish_area" VALUES (1, 1, 1, 1, NULL, 0, 5.0, 1.0, 30.0, 40.0, '2026-11-03T10:00:00Z', 'h');
INSERT INTO "invoice" VALUES (1, 1, NULL, NULL, 2026, 1, '2026-11-03', '2026-11-03', '', '', '', '', 'EUR', 'PER_LINE', 1, 0, 1, 0, '', '', '', '2026-11-03T10:00:00Z', 'h');
INSERT INTO "invoice_line" VALUES (1, 1, NULL, 't', NULL, 1, 0);
INSERT INTO "advice_decision" VALUES (1, 1, 1, NULL, 'LEAVE', 't', 'r', 'h', '2026-11-03T10:00:00Z');
INSERT INTO "closing_tick" VALUES (1, 1, 'cleats', 't', 1, '', 'h', '2026-11-03T10:00:00Z');
INSERT INTO "bench_plan" VALUES (1, NULL, 'b', 'h', '2026-11-03T10:00:00Z');
INSERT INTO "bench_plan_piece" VALUES (1, 1, 0, '2026-11-03T10:00:00Z', '2026-11-03T10:05:00Z', '2026-11-03T10:05:00Z', 'h');
INSERT INTO "bench_plan_visit" VALUES (1, 1, '2026-11-03T10:05:00Z', NULL, NULL);
INSERT INTO "absence" VALUES (1, NULL, 0, 'h', '2026-11-03', '2026-11-04', '', 'h', '2026-11-03T10:00:00Z');
INSERT INTO "visit_urgency" VALUES (1, NULL, 1, 'URGENT', 'h', '2026-11-03T10:00:00Z');
INSERT INTO "practice_time" VALUES (1, NULL, 0, 't', 's', 1.0, 2.0, 3.0, 0.0, 0.0, 0.0, 'h', '2026-11-03T10:00:00Z');
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
CREATE INDEX retouch_of_visit ON retouch (visit_id);
CREATE INDEX retouch_coat_of_retouch ON retouch_coat (retouch_id);
CREATE INDEX retouch_reading_of_coat ON retouch_reading (coat_id);
CREATE INDEX varnish_coat_of_varnish ON varnish_coat (varnish_id);
CREATE INDEX varnish_area_of_visit ON varnish_area (visit_id);
CREATE TRIGGER palette_film_kept BEFORE UPDATE ON palette_film BEGIN SELECT RAISE(ABORT, 'history is kept: palette_film'); END;
CREATE TRIGGER palette_film_not_removed BEFORE DELETE ON palette_film BEGIN SELECT RAISE(ABORT, 'history is kept: palette_film'); END;
CREATE TRIGGER retouch_kept BEFORE UPDATE ON retouch BEGIN SELECT RAISE(ABORT, 'history is kept: retouch'); END;
CREATE TRIGGER retouch_not_removed BEFORE DELETE ON retouch BEGIN SELECT RAISE(ABORT, 'history is kept: retouch'); END;
CREATE TRIGGER retouch_colour_kept BEFORE UPDATE ON retouch_colour BEGIN SELECT RAISE(ABORT, 'history is kept: retouch_colour'); END;
CREATE TRIGGER retouch_colour_not_removed BEFORE DELETE ON retouch_colour BEGIN SELECT RAISE(ABORT, 'history is kept: retouch_colour'); END;
CREATE TRIGGER retouch_coat_kept BEFORE UPDATE ON retouch_coat BEGIN SELECT RAISE(ABORT, 'history is kept: retouch_coat'); END;
CREATE TRIGGER retouch_coat_not_removed BEFORE DELETE ON retouch_coat BEGIN SELECT RAISE(ABORT, 'history is kept: retouch_coat'); END;
CREATE TRIGGER retouch_coat_part_kept BEFORE UPDATE ON retouch_coat_part BEGIN SELECT RAISE(ABORT, 'history is kept: retouch_coat_part'); END;
CREATE TRIGGER retouch_coat_part_not_removed BEFORE DELETE ON retouch_coat_part BEGIN SELECT RAISE(ABORT, 'history is kept: retouch_coat_part'); END;
CREATE TRIGGER retouch_reading_kept BEFORE UPDATE ON retouch_reading BEGIN SELECT RAISE(ABORT, 'history is kept: retouch_reading'); END;
CREATE TRIGGER retouch_reading_not_removed BEFORE DELETE ON retouch_reading BEGIN SELECT RAISE(ABORT, 'history is kept: retouch_reading'); END;
CREATE TRIGGER varnish_part_kept BEFORE UPDATE ON varnish_part BEGIN SELECT RAISE(ABORT, 'history is kept: varnish_part'); END;
CREATE TRIGGER varnish_part_not_removed BEFORE DELETE ON varnish_part BEGIN SELECT RAISE(ABORT, 'history is kept: varnish_part'); END;
CREATE TRIGGER varnish_coat_kept BEFORE UPDATE ON varnish_coat BEGIN SELECT RAISE(ABORT, 'history is kept: varnish_coat'); END;
CREATE TRIGGER varnish_coat_not_removed BEFORE DELETE ON varnish_coat BEGIN SELECT RAISE(ABORT, 'history is kept: varnish_coat'); END;
CREATE TRIGGER varnish_area_kept BEFORE UPDATE ON varnish_area BEGIN SELECT RAISE(ABORT, 'history is kept: varnish_area'); END;
CREATE TRIGGER varnish_area_not_removed BEFORE DELETE ON varnish_area BEGIN SELECT RAISE(ABORT, 'history is kept: varnish_area'); END;
CREATE TRIGGER palette_colour_kept BEFORE UPDATE OF name, medium, reversible_with, colour_class, spectral, absorption, scatter, largest_difference, written_at, hand ON palette_colour
  BEGIN SELECT RAISE(ABORT, 'history is kept: palette_colour'); END;
CREATE TRIGGER palette_colour_not_removed BEFORE DELETE ON palette_colour BEGIN SELECT RAISE(ABORT, 'history is kept: palette_colour'); END;
CREATE TRIGGER varnish_kept BEFORE UPDATE OF name, made_on, remark, written_at, hand ON varnish
  BEGIN SELECT RAISE(ABORT, 'history is kept: varnish'); END;
CREATE TRIGGER varnish_not_removed BEFORE DELETE ON varnish BEGIN SELECT RAISE(ABORT, 'history is kept: varnish'); END;
CREATE VIEW retouch_now AS
  SELECT r.* FROM retouch r WHERE r.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM retouch later WHERE later.replaces = r.id);
CREATE VIEW retouch_reading_now AS
  SELECT r.* FROM retouch_reading r
  WHERE NOT EXISTS (SELECT 1 FROM retouch_reading later WHERE later.coat_id = r.coat_id AND later.id > r.id);
CREATE VIEW varnish_coat_now AS
  SELECT c.* FROM varnish_coat c WHERE c.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM varnish_coat later WHERE later.replaces = c.id);
CREATE VIEW varnish_area_now AS
  SELECT a.* FROM varnish_area a WHERE a.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM varnish_area later WHERE later.replaces = a.id);
CREATE TRIGGER diary_entry_kept BEFORE UPDATE ON diary_entry BEGIN SELECT RAISE(ABORT, 'history is kept: diary_entry'); END;
CREATE VIEW diary_entry_told AS
  SELECT d.id, d.visit_id, d.step_id, d.replaces, d.withdrawn, d.what, d.at, d.minutes, d.more_hours, d.hand, d.material,
    d.reversible_with, d.remark, d.written_at, coalesce(d.first_id, d.id) AS first_id,
    coalesce(d.first_written_at, d.written_at) AS first_written_at, coalesce(s.name, '') AS step_name
  FROM diary_entry d LEFT JOIN step s ON s.id = d.step_id;
CREATE VIEW diary_entry_now AS
  SELECT d.* FROM diary_entry_told d
  WHERE d.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM diary_entry later WHERE later.replaces = d.id);
CREATE INDEX erasing_of_owner ON erasing (owner_id);
CREATE TRIGGER erasing_kept BEFORE UPDATE ON erasing BEGIN SELECT RAISE(ABORT, 'history is kept: erasing'); END;
CREATE TRIGGER erasing_not_removed BEFORE DELETE ON erasing BEGIN SELECT RAISE(ABORT, 'history is kept: erasing'); END;
CREATE INDEX mended_line_of_visit ON mended_line (visit_id);
CREATE TRIGGER mended_line_kept BEFORE UPDATE ON mended_line BEGIN SELECT RAISE(ABORT, 'history is kept: mended_line'); END;
CREATE TRIGGER mended_line_not_removed BEFORE DELETE ON mended_line BEGIN SELECT RAISE(ABORT, 'history is kept: mended_line'); END;
CREATE TRIGGER mended_line_sight_kept BEFORE UPDATE ON mended_line_sight BEGIN SELECT RAISE(ABORT, 'history is kept: mended_line_sight'); END;
CREATE TRIGGER mended_line_sight_not_removed BEFORE DELETE ON mended_line_sight BEGIN SELECT RAISE(ABORT, 'history is kept: mended_line_sight'); END;
CREATE VIEW mended_line_now AS
  SELECT l.* FROM mended_line l WHERE l.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM mended_line later WHERE later.replaces = l.id);
CREATE TRIGGER sent_once_kept BEFORE UPDATE ON sent_once BEGIN SELECT RAISE(ABORT, 'history is kept: sent_once'); END;
CREATE TRIGGER sent_once_not_removed BEFORE DELETE ON sent_once BEGIN SELECT RAISE(ABORT, 'history is kept: sent_once'); END;
CREATE TRIGGER card_in_photograph_kept BEFORE UPDATE ON card_in_photograph
  BEGIN SELECT RAISE(ABORT, 'history is kept: card_in_photograph'); END;
CREATE TRIGGER card_in_photograph_not_removed BEFORE DELETE ON card_in_photograph
  BEGIN SELECT RAISE(ABORT, 'history is kept: card_in_photograph'); END;
CREATE INDEX invoice_of_visit ON invoice (visit_id);
CREATE TRIGGER invoice_without_gap BEFORE INSERT ON invoice
WHEN NEW.serial <> (SELECT coalesce(max(serial), 0) + 1 FROM invoice WHERE year = NEW.year)
BEGIN SELECT RAISE(ABORT, 'invoice numbers have no gap'); END;
CREATE TRIGGER invoice_kept BEFORE UPDATE ON invoice BEGIN SELECT RAISE(ABORT, 'history is kept: invoice'); END;
CREATE TRIGGER invoice_not_removed BEFORE DELETE ON invoice BEGIN SELECT RAISE(ABORT, 'history is kept: invoice'); END;
CREATE TRIGGER invoice_line_kept BEFORE UPDATE ON invoice_line BEGIN SELECT RAISE(ABORT, 'history is kept: invoice_line'); END;
CREATE TRIGGER invoice_line_not_removed BEFORE DELETE ON invoice_line BEGIN SELECT RAISE(ABORT, 'history is kept: invoice_line'); END;
CREATE INDEX advice_decision_of_finding ON advice_decision (finding_id);
CREATE TRIGGER advice_decision_kept BEFORE UPDATE ON advice_decision BEGIN SELECT RAISE(ABORT, 'history is kept: advice_decision'); END;
CREATE TRIGGER advice_decision_not_removed BEFORE DELETE ON advice_decision BEGIN SELECT RAISE(ABORT, 'history is kept: advice_decision'); END;
CREATE INDEX closing_tick_of_visit ON closing_tick (visit_id);
CREATE TRIGGER closing_tick_kept BEFORE UPDATE ON closing_tick BEGIN SELECT RAISE(ABORT, 'history is kept: closing_tick'); END;
CREATE TRIGGER closing_tick_not_removed BEFORE DELETE ON closing_tick BEGIN SELECT RAISE(ABORT, 'history is kept: closing_tick'); END;
CREATE INDEX visit_urgency_of_visit ON visit_urgency (visit_id);
CREATE TRIGGER bench_plan_kept BEFORE UPDATE ON bench_plan BEGIN SELECT RAISE(ABORT, 'history is kept: bench_plan'); END;
CREATE TRIGGER bench_plan_not_removed BEFORE DELETE ON bench_plan BEGIN SELECT RAISE(ABORT, 'history is kept: bench_plan'); END;
CREATE TRIGGER bench_plan_piece_kept BEFORE UPDATE ON bench_plan_piece BEGIN SELECT RAISE(ABORT, 'history is kept: bench_plan_piece'); END;
CREATE TRIGGER bench_plan_piece_not_removed BEFORE DELETE ON bench_plan_piece BEGIN SELECT RAISE(ABORT, 'history is kept: bench_plan_piece'); END;
CREATE TRIGGER bench_plan_visit_kept BEFORE UPDATE ON bench_plan_visit BEGIN SELECT RAISE(ABORT, 'history is kept: bench_plan_visit'); END;
CREATE TRIGGER bench_plan_visit_not_removed BEFORE DELETE ON bench_plan_visit BEGIN SELECT RAISE(ABORT, 'history is kept: bench_plan_visit'); END;
CREATE TRIGGER absence_kept BEFORE UPDATE ON absence BEGIN SELECT RAISE(ABORT, 'history is kept: absence'); END;
CREATE TRIGGER absence_not_removed BEFORE DELETE ON absence BEGIN SELECT RAISE(ABORT, 'history is kept: absence'); END;
CREATE TRIGGER visit_urgency_kept BEFORE UPDATE ON visit_urgency BEGIN SELECT RAISE(ABORT, 'history is kept: visit_urgency'); END;
CREATE TRIGGER visit_urgency_not_removed BEFORE DELETE ON visit_urgency BEGIN SELECT RAISE(ABORT, 'history is kept: visit_urgency'); END;
CREATE VIEW bench_plan_now AS
  SELECT p.* FROM bench_plan p WHERE NOT EXISTS (SELECT 1 FROM bench_plan later WHERE later.replaces = p.id);
CREATE VIEW absence_now AS
  SELECT a.* FROM absence a WHERE a.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM absence later WHERE later.replaces = a.id);
CREATE VIEW visit_urgency_now AS
  SELECT u.* FROM visit_urgency u WHERE NOT EXISTS (SELECT 1 FROM visit_urgency later WHERE later.replaces = u.id);
CREATE TRIGGER practice_time_kept BEFORE UPDATE ON practice_time BEGIN SELECT RAISE(ABORT, 'history is kept: practice_time'); END;
CREATE TRIGGER practice_time_not_removed BEFORE DELETE ON practice_time BEGIN SELECT RAISE(ABORT, 'history is kept: practice_time'); END;
CREATE VIEW practice_time_now AS
  SELECT p.* FROM practice_time p WHERE p.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM practice_time later WHERE later.replaces = p.id);
PRAGMA user_version = 14;
