-- Marks on pictures -----------------------------------------------------------------------------------------------------------

-- history: something drawn on a photograph, or on our own drawing of the instrument. The selector is the one of a W3C Web
-- Annotation, an SVG element in pixels of the upright picture, or in units of the drawing. The size of a line is its length, of
-- an area its longest extent.
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
CREATE INDEX mark_of_photograph ON mark (photograph_id);
CREATE INDEX mark_of_visit ON mark (visit_id);
CREATE VIEW mark_now AS
  SELECT m.* FROM mark m WHERE m.withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM mark later WHERE later.replaces = m.id);
CREATE TRIGGER mark_kept BEFORE UPDATE ON mark BEGIN SELECT RAISE(ABORT, 'history is kept: mark'); END;
CREATE TRIGGER mark_not_removed BEFORE DELETE ON mark BEGIN SELECT RAISE(ABORT, 'history is kept: mark'); END;

-- history: how long the two check lines of a printed card are; the last row of a card holds
CREATE TABLE card_print (
  id         INTEGER PRIMARY KEY,
  card       TEXT NOT NULL CHECK (card IN ('BODY', 'BODY_LETTER', 'POCKET')),
  level_mm   REAL NOT NULL,
  upright_mm REAL NOT NULL,
  written_at TEXT NOT NULL
) STRICT;
CREATE TRIGGER card_print_kept BEFORE UPDATE ON card_print BEGIN SELECT RAISE(ABORT, 'history is kept: card_print'); END;
CREATE TRIGGER card_print_not_removed BEFORE DELETE ON card_print BEGIN SELECT RAISE(ABORT, 'history is kept: card_print'); END;
