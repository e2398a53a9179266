package afterlength.workshop.agreement;

import afterlength.craft.access.CleatGrain;
import afterlength.craft.access.CleatRow;
import afterlength.craft.access.CleatShape;
import afterlength.craft.access.LeftOut;
import afterlength.craft.access.Motion;
import afterlength.craft.access.MotionAnswer;
import afterlength.craft.access.NoMotionFound;
import afterlength.craft.access.PlacedCleat;
import afterlength.craft.access.Pose;
import afterlength.craft.access.ReasonToOpen;
import afterlength.craft.access.Section;
import afterlength.craft.access.SectionPassage;
import afterlength.craft.estimate.HandsOn;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The sentences about access: rounding, units and reasons in one place. */
final class AccessWords {
    static final List<Choice> SHAPES = List.of(
            new Choice(CleatShape.LOZENGE.name(), "lozenge, a corner along the crack"),
            new Choice(CleatShape.SQUARE.name(), "square, a side along the crack"));
    static final List<Choice> GRAINS = List.of(
            new Choice(CleatGrain.DIAGONAL.name(), "slantwise to the plate's grain (Petherick, 1903)"),
            new Choice(CleatGrain.CROSSWISE.name(), "crosswise to the plate's grain (Mayson, 1909)"));
    static final List<Choice> CHOICES = Stream.of(AccessChoice.values())
            .map(choice -> new Choice(choice.name(), choice.words()))
            .toList();

    private AccessWords() {}

    static String passage(SectionPassage passage) {
        String section = section(passage.question().section());
        double clearance_mm = passage.question().clearance_mm();
        String air = passage.findMost()
                .map(most -> most.air_mm() >= 0
                        ? "with " + Figures.mm(most.air_mm(), 1) + " of air on every side at its best place"
                        : Figures.mm(-most.air_mm(), 1) + " would have to come off every side")
                .orElse("not even a thin strip goes in");
        return passage.passes()
                ? section + " passes the hole, " + air + "."
                : section + " does not pass with " + Figures.mm(clearance_mm, 1) + " of air on every side: " + air
                        + ".";
    }

    static String section(Section section) {
        return Figures.fixed(section.width_mm(), 1) + " × " + Figures.mm(section.thickness_mm(), 1);
    }

    static String largest(SectionPassage passage) {
        return passage.findLargestThickness()
                        .map(most -> "Of this width the thickest that passes without air is "
                                + Figures.mm(most.section().thickness_mm(), 1) + ". ")
                        .orElse("")
                + passage.findLeanFlat()
                        .map(lean -> "In this plate it may lean by " + Figures.fixed(lean.deg(), 0) + "° on its way.")
                        .orElse("");
    }

    static String motion(MotionAnswer answer) {
        if (answer instanceof Motion) {
            return "A way in to the first cleat's place was found and every pose of it looked at twice.";
        }
        if (answer instanceof NoMotionFound none) {
            String miss = none.air_mm() < 0
                    ? "its smallest section, " + section(none.section()) + ", is too large by "
                            + Figures.mm(-2 * none.air_mm(), 1)
                    : "each part would pass by itself, the tightest, " + section(none.section()) + ", with "
                            + Figures.mm(none.air_mm(), 1) + " of air on every side";
            return "No way in was found: " + miss
                    + ". That is no proof that there is none; rolling about the arm was not tried.";
        }
        return "The search was stopped.";
    }

    /** What the hands do from one drawn pose to the next. */
    static String step(Pose from, Pose to) {
        List<String> moves = new ArrayList<>();
        double sunk_mm = from.z_mm() - to.z_mm();
        double tilted_deg = to.tilt_deg() - from.tilt_deg();
        double turned_deg = to.heading_deg() - from.heading_deg();
        double shifted_mm = Math.hypot(to.x_mm() - from.x_mm(), to.y_mm() - from.y_mm());
        add(moves, Math.abs(sunk_mm) >= 0.5, (sunk_mm > 0 ? "sink " : "raise ") + Figures.mm(Math.abs(sunk_mm), 0));
        add(
                moves,
                Math.abs(tilted_deg) >= 1,
                "tilt from " + degrees(from.tilt_deg()) + " to " + degrees(to.tilt_deg()));
        add(moves, Math.abs(turned_deg) >= 1, "turn by " + degrees(Math.abs(turned_deg)));
        add(moves, shifted_mm >= 0.5, "shift by " + Figures.mm(shifted_mm, 0));
        return moves.isEmpty() ? "hold" : String.join(", ", moves);
    }

    private static void add(List<String> moves, boolean worthSaying, String move) {
        if (worthSaying) {
            moves.add(move);
        }
    }

    private static String degrees(double value) {
        return Figures.fixed(value, 0) + "°";
    }

    static String row(CleatRow row) {
        int count = row.cleats().size();
        String cleats = count == 0 ? "No cleat" : count == 1 ? "One cleat" : count + " cleats";
        return cleats + ", together " + Figures.fixed(row.addedMass_g(), 2) + " g.";
    }

    static String cleat(PlacedCleat cleat) {
        String moved = cleat.moved_mm() == 0 ? "" : ", moved by " + Figures.mm(cleat.moved_mm(), 1);
        return Figures.mm(cleat.along_mm(), 0) + " along the crack" + moved;
    }

    /** A step of the plan of work: least to most by hand, and what follows while nothing is touched. */
    static String work(TemplateStep step) {
        HandsOn hands = step.handsOn();
        Wait wait = step.waiting();
        String alone = wait.high_h() == 0
                ? ""
                : "; then left alone for "
                        + Figures.range(Figures.plain(wait.low_h()) + " h", Figures.plain(wait.high_h()) + " h");
        return step.name() + ": "
                + Figures.range(Figures.plain(hands.low_min()) + " min", Figures.plain(hands.high_min()) + " min")
                + " by hand" + alone;
    }

    static String reach(AccessLook look) {
        String throat = "The far end of the crack lies " + Figures.mm(look.throat_mm(), 0)
                + " from the edge of the hole, measured in the flat; that is the throat a clamp needs.";
        int beyond = look.outOfReach().size();
        return beyond == 0
                ? throat
                : throat + " " + (beyond == 1 ? "One cleat is" : beyond + " cleats are")
                        + " out of reach of every clamp on the shelf.";
    }

    static String reason(ReasonToOpen reason) {
        if (reason instanceof ReasonToOpen.UnderPost) {
            return "It runs under the post: the post would press on the mended line from within.";
        }
        if (reason instanceof ReasonToOpen.UnderBar) {
            return "It runs under the bar: the bar hides it and would hold it open.";
        }
        if (reason instanceof ReasonToOpen.OutOfLevel level) {
            return "Its edges stand " + Figures.mm(level.step_mm(), 1)
                    + " out of level and do not close dry; cleats do not level.";
        }
        if (reason instanceof ReasonToOpen.OutOfReach reach) {
            return reach.cleats() + " cleats are out of reach of the clamps on the shelf.";
        }
        return "It cannot be cleaned from outside, and glue does not hold on dirt.";
    }

    static String along(LeftOut left) {
        return Figures.mm(left.along_mm(), 0);
    }

    static String thing(LeftOut left) {
        return switch (left.because()) {
            case BAR -> "bar";
            case POST -> "place of the post";
            case LINING -> "lining";
            case SOUND_HOLE -> "edge of the sound-hole";
            case CLEAT -> "cleat beside it";
        };
    }
}
