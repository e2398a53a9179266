package afterlength.workshop.agreement;

import afterlength.craft.access.Carried;
import afterlength.craft.access.Cavity;
import afterlength.craft.access.Clamp;
import afterlength.craft.access.CleatPlan;
import afterlength.craft.access.CleatRow;
import afterlength.craft.access.Crack;
import afterlength.craft.access.CrackFacts;
import afterlength.craft.access.KeepOff;
import afterlength.craft.access.PassageAnswer;
import afterlength.craft.access.PlacedCleat;
import afterlength.craft.access.Reach;
import afterlength.craft.access.ReasonToOpen;
import afterlength.craft.access.Section;
import afterlength.craft.access.SectionPassage;
import afterlength.craft.access.SectionQuestion;
import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the arithmetic says to a study.
 *
 * @param outOfReach cleats that no clamp on the shelf reaches; none while no clamp is written down
 */
record AccessLook(
        AccessStudy study,
        Outline hole,
        Crack crack,
        Cavity cavity,
        Carried carried,
        SectionPassage passage,
        CleatRow row,
        double throat_mm,
        List<PlacedCleat> outOfReach,
        List<ReasonToOpen> reasons) {
    /** Kept free round the hole; the edge is thin and seen. Our own choice. */
    private static final double OFF_THE_HOLE_MM = 3;

    /** The answer to the section, which may be a refusal of the outline. */
    static PassageAnswer passage(AccessStudy study, List<Point> hole, @Nullable Clamp clamp) {
        double width_mm = study.cleatWidthMm();
        double thickness_mm = study.cleatThicknessMm();
        Section section = clamp == null
                ? new Section(width_mm, thickness_mm)
                : new Section(Math.max(width_mm, clamp.jawWidth_mm()), thickness_mm + clamp.jawHeight_mm());
        return SectionPassage.of(
                new SectionQuestion(new Outline(hole), section, SectionQuestion.USUAL_CLEARANCE_MM, study.plateMm()));
    }

    static AccessLook of(
            AccessStudy study,
            SectionPassage passage,
            List<Point> crackLine,
            @Nullable Clamp clamp,
            List<Clamp> clamps) {
        Outline hole = passage.question().hole();
        Crack crack = new Crack(crackLine);
        CleatRow row = CleatRow.of(new CleatPlan(
                crack,
                study.cleat(),
                study.shape(),
                study.grain(),
                study.spacingMm(),
                study.toEndsMm(),
                study.inside().grainLineDeg(),
                keepOffs(study, hole),
                CleatPlan.SPRUCE_KG_M3));
        List<PlacedCleat> outOfReach = clamps.isEmpty()
                ? List.of()
                : Reach.outOfReach(hole, row.cleats(), clamps, SectionQuestion.USUAL_CLEARANCE_MM);
        Cavity cavity = new Cavity(hole, study.plateMm(), study.depthMm());
        Carried carried = clamp == null ? Carried.alone(study.cleat()) : Carried.on(clamp, study.cleat());
        List<ReasonToOpen> reasons = ReasonToOpen.list(new CrackFacts(
                study.underPost(),
                study.underBar(),
                study.stepMm(),
                study.closesDry(),
                study.cleanable(),
                outOfReach.size()));
        double throat_mm = Reach.throat_mm(hole, crack);
        return new AccessLook(study, hole, crack, cavity, carried, passage, row, throat_mm, outOfReach, reasons);
    }

    private static List<KeepOff> keepOffs(AccessStudy study, Outline hole) {
        List<KeepOff> all = new ArrayList<>(study.inside().keepOffs());
        all.add(new KeepOff(KeepOff.Kind.SOUND_HOLE, hole, OFF_THE_HOLE_MM));
        return all;
    }
}
