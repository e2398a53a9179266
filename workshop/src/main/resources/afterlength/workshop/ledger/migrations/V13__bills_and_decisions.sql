-- Bills, credit notes and decisions. An invoice keeps every word and figure it was printed with, so that it can be printed again in ten years;
-- its number follows the one before it in the same year, and the database refuses a gap.

-- history
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
CREATE INDEX invoice_of_visit ON invoice (visit_id);

-- history
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

CREATE TRIGGER invoice_without_gap BEFORE INSERT ON invoice
WHEN NEW.serial <> (SELECT coalesce(max(serial), 0) + 1 FROM invoice WHERE year = NEW.year)
BEGIN SELECT RAISE(ABORT, 'invoice numbers have no gap'); END;

CREATE TRIGGER invoice_kept BEFORE UPDATE ON invoice BEGIN SELECT RAISE(ABORT, 'history is kept: invoice'); END;
CREATE TRIGGER invoice_not_removed BEFORE DELETE ON invoice BEGIN SELECT RAISE(ABORT, 'history is kept: invoice'); END;
CREATE TRIGGER invoice_line_kept BEFORE UPDATE ON invoice_line BEGIN SELECT RAISE(ABORT, 'history is kept: invoice_line'); END;
CREATE TRIGGER invoice_line_not_removed BEFORE DELETE ON invoice_line BEGIN SELECT RAISE(ABORT, 'history is kept: invoice_line'); END;

-- advice --------------------------------------------------------------------------------------------------------------------

-- history: what the restorer decided about a finding, and why
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
CREATE INDEX advice_decision_of_finding ON advice_decision (finding_id);
CREATE TRIGGER advice_decision_kept BEFORE UPDATE ON advice_decision BEGIN SELECT RAISE(ABORT, 'history is kept: advice_decision'); END;
CREATE TRIGGER advice_decision_not_removed BEFORE DELETE ON advice_decision BEGIN SELECT RAISE(ABORT, 'history is kept: advice_decision'); END;

-- closing -------------------------------------------------------------------------------------------------------------------

-- history: what was recorded before it was covered; the latest row of a visit and a thing holds
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
CREATE INDEX closing_tick_of_visit ON closing_tick (visit_id);
CREATE TRIGGER closing_tick_kept BEFORE UPDATE ON closing_tick BEGIN SELECT RAISE(ABORT, 'history is kept: closing_tick'); END;
CREATE TRIGGER closing_tick_not_removed BEFORE DELETE ON closing_tick BEGIN SELECT RAISE(ABORT, 'history is kept: closing_tick'); END;
