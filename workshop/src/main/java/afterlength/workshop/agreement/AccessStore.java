package afterlength.workshop.agreement;

import afterlength.workshop.ledger.Ledger;
import java.util.Optional;

/** Keeps the studies of access; each new one of a finding replaces the one before and leaves it readable. */
public final class AccessStore {
    private final Ledger ledger;

    public AccessStore(Ledger ledger) {
        this.ledger = ledger;
    }

    /** The study that holds for a finding, whichever wording of the finding it was made for. */
    public Optional<AccessStudy> findNow(long findingId) {
        return ledger.read(handle -> handle.createQuery("""
                        WITH RECURSIVE form (id, replaces) AS (
                          SELECT id, replaces FROM finding WHERE id = :finding
                          UNION ALL SELECT f.id, f.replaces FROM finding f JOIN form ON f.id = form.replaces)
                        SELECT * FROM access_study_now WHERE finding_id IN (SELECT id FROM form) ORDER BY id DESC LIMIT 1
                        """)
                .bind("finding", findingId)
                .mapTo(AccessStudy.class)
                .findOne());
    }

    public long add(AccessStudy study) {
        return ledger.write(handle -> handle.createUpdate("""
                        INSERT INTO access_study (finding_id, replaces, outline, crack, plate_mm, depth_mm, cleat_length_mm,
                          cleat_width_mm, cleat_thickness_mm, shape, grain, spacing_mm, to_ends_mm, clamp_id, under_post,
                          under_bar, step_mm, closes_dry, cleanable, chosen, hand, written_at, grain_line_deg, bar, bar_mm,
                          post, post_mm, lining, lining_mm, photograph_id, photograph_height_mm)
                        VALUES (:findingId, :replaces, :outline, :crack, :plateMm, :depthMm, :cleatLengthMm,
                          :cleatWidthMm, :cleatThicknessMm, :shape, :grain, :spacingMm, :toEndsMm, :clampId, :underPost,
                          :underBar, :stepMm, :closesDry, :cleanable, :chosen, :hand, :writtenAt,
                          :inside.grainLineDeg, :inside.bar, :inside.barMm, :inside.post, :inside.postMm, :inside.lining,
                          :inside.liningMm, :inside.photographId, :inside.photographHeightMm)
                        """)
                .bindMethods(study)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one());
    }
}
