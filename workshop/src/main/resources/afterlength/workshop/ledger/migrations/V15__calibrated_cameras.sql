-- Cameras whose lens was solved from several pictures of a card -----------------------------------------------------------------

-- history: one calibration. The camera is known by what it notes in its files; the lens is given in pixels of the picture as the
-- sensor lay, each value with one standard deviation; distances are from the lens to the card along the axis.
CREATE TABLE camera_calibration (
  id                    INTEGER PRIMARY KEY,
  camera                TEXT NOT NULL,
  lens                  TEXT NOT NULL,
  focal_mm              REAL NOT NULL CHECK (focal_mm > 0),
  focal35_mm            REAL NOT NULL CHECK (focal35_mm >= 0),
  width_px              INTEGER NOT NULL CHECK (width_px > 0),
  height_px             INTEGER NOT NULL CHECK (height_px > 0),
  log_focal             REAL NOT NULL,
  log_focal_deviation   REAL NOT NULL CHECK (log_focal_deviation > 0),
  k1                    REAL NOT NULL,
  k1_deviation          REAL NOT NULL CHECK (k1_deviation > 0),
  centre_x_px           REAL NOT NULL,
  centre_x_deviation_px REAL NOT NULL CHECK (centre_x_deviation_px > 0),
  centre_y_px           REAL NOT NULL,
  centre_y_deviation_px REAL NOT NULL CHECK (centre_y_deviation_px > 0),
  nearest_mm            REAL NOT NULL CHECK (nearest_mm > 0),
  usual_mm              REAL NOT NULL,
  farthest_mm           REAL NOT NULL,
  residual_px           REAL NOT NULL,
  hand                  TEXT NOT NULL,
  written_at            TEXT NOT NULL
) STRICT;

-- history: the pictures it was solved from; their files are not kept
CREATE TABLE camera_calibration_picture (
  calibration_id INTEGER NOT NULL REFERENCES camera_calibration,
  position       INTEGER NOT NULL CHECK (position >= 0),
  sha256         TEXT NOT NULL,
  corners        INTEGER NOT NULL,
  residual_px    REAL NOT NULL,
  tilt_deg       REAL NOT NULL,
  distance_mm    REAL NOT NULL,
  PRIMARY KEY (calibration_id, position)
) STRICT;

-- history: whether a calibration is put aside; the last row holds, and without one it is in use
CREATE TABLE camera_calibration_standing (
  id             INTEGER PRIMARY KEY,
  calibration_id INTEGER NOT NULL REFERENCES camera_calibration,
  put_aside      INTEGER NOT NULL,
  written_at     TEXT NOT NULL
) STRICT;

CREATE TRIGGER camera_calibration_kept BEFORE UPDATE ON camera_calibration
  BEGIN SELECT RAISE(ABORT, 'history is kept: camera_calibration'); END;
CREATE TRIGGER camera_calibration_not_removed BEFORE DELETE ON camera_calibration
  BEGIN SELECT RAISE(ABORT, 'history is kept: camera_calibration'); END;
CREATE TRIGGER camera_calibration_picture_kept BEFORE UPDATE ON camera_calibration_picture
  BEGIN SELECT RAISE(ABORT, 'history is kept: camera_calibration_picture'); END;
CREATE TRIGGER camera_calibration_picture_not_removed BEFORE DELETE ON camera_calibration_picture
  BEGIN SELECT RAISE(ABORT, 'history is kept: camera_calibration_picture'); END;
CREATE TRIGGER camera_calibration_standing_kept BEFORE UPDATE ON camera_calibration_standing
  BEGIN SELECT RAISE(ABORT, 'history is kept: camera_calibration_standing'); END;
CREATE TRIGGER camera_calibration_standing_not_removed BEFORE DELETE ON camera_calibration_standing
  BEGIN SELECT RAISE(ABORT, 'history is kept: camera_calibration_standing'); END;

CREATE VIEW camera_calibration_now AS
  SELECT c.*, coalesce((SELECT s.put_aside FROM camera_calibration_standing s WHERE s.calibration_id = c.id
    ORDER BY s.id DESC LIMIT 1), 0) AS put_aside FROM camera_calibration c;
