-- What stands inside an instrument where a crack is reached, how the traced axes lie, and the photograph they were traced on ------

ALTER TABLE access_study ADD COLUMN grain_line_deg REAL NOT NULL DEFAULT 90;
ALTER TABLE access_study ADD COLUMN bar TEXT NOT NULL DEFAULT '';
ALTER TABLE access_study ADD COLUMN bar_mm REAL NOT NULL DEFAULT 6;
ALTER TABLE access_study ADD COLUMN post TEXT NOT NULL DEFAULT '';
ALTER TABLE access_study ADD COLUMN post_mm REAL NOT NULL DEFAULT 6;
ALTER TABLE access_study ADD COLUMN lining TEXT NOT NULL DEFAULT '';
ALTER TABLE access_study ADD COLUMN lining_mm REAL NOT NULL DEFAULT 3;
ALTER TABLE access_study ADD COLUMN photograph_id INTEGER REFERENCES photograph;
ALTER TABLE access_study ADD COLUMN photograph_height_mm REAL NOT NULL DEFAULT 0;

-- A printed card carries a number, so that its check lines are kept for that one sheet -----------------------------------------------
ALTER TABLE card_print ADD COLUMN number INTEGER NOT NULL DEFAULT 1;

-- history: which sheet lies in a photograph, where it is not the first one; the last row of a photograph holds
CREATE TABLE card_in_photograph (
  id            INTEGER PRIMARY KEY,
  photograph_id INTEGER NOT NULL REFERENCES photograph,
  number        INTEGER NOT NULL,
  written_at    TEXT NOT NULL
) STRICT;
CREATE TRIGGER card_in_photograph_kept BEFORE UPDATE ON card_in_photograph
  BEGIN SELECT RAISE(ABORT, 'history is kept: card_in_photograph'); END;
CREATE TRIGGER card_in_photograph_not_removed BEFORE DELETE ON card_in_photograph
  BEGIN SELECT RAISE(ABORT, 'history is kept: card_in_photograph'); END;
