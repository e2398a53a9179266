package afterlength.workshop.examination;

import afterlength.sight.picture.CameraKey;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * Keeps the calibrations of the shop's cameras. A newer one of the same camera takes the place of an older one; when it is put
 * aside, the older one holds again.
 */
public final class CalibratedCameraStore {
    private final Ledger ledger;

    public CalibratedCameraStore(Ledger ledger) {
        this.ledger = ledger;
    }

    /** All calibrations, those put aside too, the newest first. */
    public List<CalibratedCamera> list() {
        return ledger.read(handle -> handle
                .createQuery("SELECT * FROM camera_calibration_now ORDER BY id DESC")
                .mapTo(CalibrationRow.class)
                .list()
                .stream()
                .map(row -> camera(handle, row))
                .toList());
    }

    CalibratedCamera get(long id) {
        return list().stream()
                .filter(one -> one.id() == id)
                .findFirst()
                .orElseThrow(() -> new NotHere("calibration", id));
    }

    /** The calibration that holds for this camera, focal length and size of picture. */
    public Optional<CalibratedCamera> find(CameraKey camera) {
        return list().stream()
                .filter(one -> !one.putAside() && one.camera().equals(camera))
                .findFirst();
    }

    /** Writes a calibration down and answers its number; the number it carries is not looked at. */
    public long add(CalibratedCamera fresh) {
        return ledger.write(handle -> {
            long id = handle.createUpdate("""
                            INSERT INTO camera_calibration (camera, lens, focal_mm, focal35_mm, width_px, height_px, log_focal,
                              log_focal_deviation, k1, k1_deviation, centre_x_px, centre_x_deviation_px, centre_y_px,
                              centre_y_deviation_px, nearest_mm, usual_mm, farthest_mm, residual_px, hand, written_at)
                            VALUES (:camera, :lens, :focalMm, :focal35Mm, :widthPx, :heightPx, :logFocal,
                              :logFocalDeviation, :k1, :k1Deviation, :centreXPx, :centreXDeviationPx, :centreYPx,
                              :centreYDeviationPx, :nearestMm, :usualMm, :farthestMm, :residualPx, :hand, :writtenAt)
                            """)
                    .bindMethods(CalibrationRow.of(fresh))
                    .executeAndReturnGeneratedKeys("id")
                    .mapTo(Long.class)
                    .one();
            for (int n = 0; n < fresh.pictures().size(); n++) {
                insert(handle, id, n, fresh.pictures().get(n));
            }
            return id;
        });
    }

    private static void insert(Handle handle, long id, int position, CalibrationPicture picture) {
        handle.createUpdate("""
                        INSERT INTO camera_calibration_picture (calibration_id, position, sha256, corners, residual_px, tilt_deg,
                          distance_mm)
                        VALUES (:calibration, :position, :sha256, :corners, :residualPx, :tiltDeg, :distanceMm)
                        """)
                .bindMethods(picture)
                .bind("calibration", id)
                .bind("position", position)
                .execute();
    }

    void putAside(long id, Instant now) {
        stand(id, true, now);
    }

    void takeBack(long id, Instant now) {
        stand(id, false, now);
    }

    private void stand(long id, boolean aside, Instant now) {
        long known = get(id).id();
        ledger.change(handle -> handle.createUpdate("""
                        INSERT INTO camera_calibration_standing (calibration_id, put_aside, written_at)
                        VALUES (:calibration, :aside, :now)
                        """)
                .bind("calibration", known)
                .bind("aside", aside)
                .bind("now", now)
                .execute());
    }

    private static CalibratedCamera camera(Handle handle, CalibrationRow row) {
        List<CalibrationPicture> pictures = handle.createQuery(
                        "SELECT * FROM camera_calibration_picture WHERE calibration_id = :id ORDER BY position")
                .bind("id", row.id())
                .mapTo(CalibrationPicture.class)
                .list();
        return new CalibratedCamera(
                row.key(), row.known(), row.residualPx(), pictures, row.hand(), row.writtenAt(), row.putAside());
    }
}
