-- history: that a person's data was erased, when and by whose hand; nothing of what it was
CREATE TABLE erasing (
  id        INTEGER PRIMARY KEY,
  owner_id  INTEGER NOT NULL REFERENCES owner,
  texts     INTEGER NOT NULL CHECK (texts >= 0),
  pictures  INTEGER NOT NULL CHECK (pictures >= 0),
  erased_at TEXT NOT NULL,
  hand      TEXT NOT NULL
) STRICT;
CREATE INDEX erasing_of_owner ON erasing (owner_id);
CREATE TRIGGER erasing_kept BEFORE UPDATE ON erasing BEGIN SELECT RAISE(ABORT, 'history is kept: erasing'); END;
CREATE TRIGGER erasing_not_removed BEFORE DELETE ON erasing BEGIN SELECT RAISE(ABORT, 'history is kept: erasing'); END;
