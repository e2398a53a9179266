-- plan ---------------------------------------------------------------------------------------------------------------------

-- history: a plan of the bench that was taken
CREATE TABLE bench_plan (
  id         INTEGER PRIMARY KEY,
  replaces   INTEGER UNIQUE REFERENCES bench_plan,
  because    TEXT NOT NULL,
  hand       TEXT NOT NULL,
  written_at TEXT NOT NULL
) STRICT;

-- history: where each piece of a step stood in it
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

-- history: when each visit was to be ready, and what its owner was promised before and since
CREATE TABLE bench_plan_visit (
  plan_id         INTEGER NOT NULL REFERENCES bench_plan,
  visit_id        INTEGER NOT NULL REFERENCES visit,
  ready_at        TEXT NOT NULL,
  promised_before TEXT,
  promised_on     TEXT,
  PRIMARY KEY (plan_id, visit_id)
) STRICT;

-- history: days on which somebody is not at the bench
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

-- history: how much a visit matters against others
CREATE TABLE visit_urgency (
  id         INTEGER PRIMARY KEY,
  replaces   INTEGER UNIQUE REFERENCES visit_urgency,
  visit_id   INTEGER NOT NULL REFERENCES visit,
  urgency    TEXT NOT NULL CHECK (urgency IN ('ORDINARY', 'SOON', 'URGENT')),
  hand       TEXT NOT NULL,
  written_at TEXT NOT NULL
) STRICT;
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

-- history: what a step takes in this shop, in place of common practice
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
CREATE TRIGGER practice_time_kept BEFORE UPDATE ON practice_time BEGIN SELECT RAISE(ABORT, 'history is kept: practice_time'); END;
CREATE TRIGGER practice_time_not_removed BEFORE DELETE ON practice_time BEGIN SELECT RAISE(ABORT, 'history is kept: practice_time'); END;
CREATE VIEW practice_time_now AS
  SELECT p.* FROM practice_time p WHERE p.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM practice_time later WHERE later.replaces = p.id);
