-- Tablets that were paired. Only the SHA-256 of what a tablet shows is kept, so that a copied database opens no door.
CREATE TABLE tablet (
  id            INTEGER PRIMARY KEY,
  name          TEXT NOT NULL CHECK (trim(name) <> ''),
  secret_sha256 TEXT NOT NULL UNIQUE,
  paired_at     TEXT NOT NULL,
  seen_at       TEXT NOT NULL,
  shut_out_at   TEXT
) STRICT;
