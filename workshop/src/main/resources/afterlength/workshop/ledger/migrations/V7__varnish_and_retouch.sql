-- retouch ------------------------------------------------------------------------------------------------------------------
-- Spectra are kept as text: first wavelength and step in nm, then the values.

-- A colour of the shop's palette as its drawdowns gave it; only whether it is put away may change.
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

-- history
CREATE TABLE palette_film (
  colour_id  INTEGER NOT NULL REFERENCES palette_colour,
  position   INTEGER NOT NULL,
  coats      REAL NOT NULL CHECK (coats > 0),
  ground     TEXT NOT NULL,
  film       TEXT NOT NULL,
  difference REAL NOT NULL,
  PRIMARY KEY (colour_id, position)
) STRICT;

-- history: a loss with its sealed ground and the varnish beside it
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
CREATE INDEX retouch_of_visit ON retouch (visit_id);

-- history
CREATE TABLE retouch_colour (
  retouch_id INTEGER NOT NULL REFERENCES retouch,
  colour_id  INTEGER NOT NULL REFERENCES palette_colour,
  PRIMARY KEY (retouch_id, colour_id)
) STRICT;

-- history: a coat that was laid; its words stand in the diary
CREATE TABLE retouch_coat (
  id              INTEGER PRIMARY KEY,
  retouch_id      INTEGER NOT NULL REFERENCES retouch,
  diary_id        INTEGER NOT NULL REFERENCES diary_entry,
  isolating       TEXT NOT NULL,
  reversible_with TEXT NOT NULL,
  laid_at         TEXT NOT NULL,
  hand            TEXT NOT NULL
) STRICT;
CREATE INDEX retouch_coat_of_retouch ON retouch_coat (retouch_id);

-- history
CREATE TABLE retouch_coat_part (
  coat_id   INTEGER NOT NULL REFERENCES retouch_coat,
  colour_id INTEGER NOT NULL REFERENCES palette_colour,
  coats     REAL NOT NULL CHECK (coats > 0),
  PRIMARY KEY (coat_id, colour_id)
) STRICT;

-- history: what the place looked like after a coat; the latest of a coat holds
CREATE TABLE retouch_reading (
  id           INTEGER PRIMARY KEY,
  coat_id      INTEGER NOT NULL REFERENCES retouch_coat,
  colour_class TEXT NOT NULL,
  spectral     INTEGER NOT NULL,
  colour       TEXT NOT NULL,
  written_at   TEXT NOT NULL,
  hand         TEXT NOT NULL
) STRICT;
CREATE INDEX retouch_reading_of_coat ON retouch_reading (coat_id);

CREATE TABLE varnish (
  id       INTEGER PRIMARY KEY,
  name     TEXT NOT NULL,
  made_on  TEXT,
  remark   TEXT NOT NULL,
  put_away INTEGER NOT NULL DEFAULT 0,
  written_at TEXT NOT NULL,
  hand     TEXT NOT NULL
) STRICT;

-- history
CREATE TABLE varnish_part (
  varnish_id    INTEGER NOT NULL REFERENCES varnish,
  position      INTEGER NOT NULL,
  name          TEXT NOT NULL,
  mass_g        REAL NOT NULL CHECK (mass_g > 0),
  density_kg_m3 REAL NOT NULL CHECK (density_kg_m3 > 0),
  part          TEXT NOT NULL CHECK (part IN ('OIL', 'RESIN', 'OTHER_SOLID', 'SOLVENT')),
  PRIMARY KEY (varnish_id, position)
) STRICT;

-- history: a coat that was watched until it was dry to the touch
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
CREATE INDEX varnish_coat_of_varnish ON varnish_coat (varnish_id);

-- history: how much varnish a worn area takes
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
CREATE INDEX varnish_area_of_visit ON varnish_area (visit_id);

-- history is kept
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
