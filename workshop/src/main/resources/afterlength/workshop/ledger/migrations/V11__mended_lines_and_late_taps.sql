-- Mended lines -------------------------------------------------------------------------------------------------------------

-- history: a line before it was mended and afterwards, read from two photographs
CREATE TABLE mended_line (
  id         INTEGER PRIMARY KEY,
  visit_id   INTEGER NOT NULL REFERENCES visit,
  replaces   INTEGER UNIQUE REFERENCES mended_line,
  withdrawn  INTEGER NOT NULL DEFAULT 0,
  place      TEXT NOT NULL,
  written_at TEXT NOT NULL,
  hand       TEXT NOT NULL
) STRICT;
CREATE INDEX mended_line_of_visit ON mended_line (visit_id);

-- history: what one photograph says of it, in ΔE00 seen from 400 mm. Across: values every 0.1 mm from one side to the other.
-- Untouched: the lines compared with, in pixels of the upright picture, one a row.
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

-- history is kept
CREATE TRIGGER mended_line_kept BEFORE UPDATE ON mended_line BEGIN SELECT RAISE(ABORT, 'history is kept: mended_line'); END;
CREATE TRIGGER mended_line_not_removed BEFORE DELETE ON mended_line BEGIN SELECT RAISE(ABORT, 'history is kept: mended_line'); END;
CREATE TRIGGER mended_line_sight_kept BEFORE UPDATE ON mended_line_sight BEGIN SELECT RAISE(ABORT, 'history is kept: mended_line_sight'); END;
CREATE TRIGGER mended_line_sight_not_removed BEFORE DELETE ON mended_line_sight BEGIN SELECT RAISE(ABORT, 'history is kept: mended_line_sight'); END;

CREATE VIEW mended_line_now AS
  SELECT l.* FROM mended_line l WHERE l.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM mended_line later WHERE later.replaces = l.id);

-- Late taps ----------------------------------------------------------------------------------------------------------------

-- history: what a screen had to send more than once, because no answer came back: its key and what was answered the first time
CREATE TABLE sent_once (
  sent_key    TEXT PRIMARY KEY,
  answer      TEXT NOT NULL,
  received_at TEXT NOT NULL
) STRICT;
CREATE TRIGGER sent_once_kept BEFORE UPDATE ON sent_once BEGIN SELECT RAISE(ABORT, 'history is kept: sent_once'); END;
CREATE TRIGGER sent_once_not_removed BEFORE DELETE ON sent_once BEGIN SELECT RAISE(ABORT, 'history is kept: sent_once'); END;
