package afterlength.start.verbs;

import afterlength.craft.access.MostAir;
import afterlength.craft.access.PassageAnswer;
import afterlength.craft.access.PassageRefused;
import afterlength.craft.access.PlacedSection;
import afterlength.craft.access.SectionPassage;
import afterlength.craft.access.Spare;
import afterlength.craft.units.Angle;
import afterlength.start.document.AnswerDocument;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import java.util.ArrayList;
import java.util.List;

/** What passes a sound-hole, and at which turn. */
final class PassageVerb implements Verb {
    @Override
    public String name() {
        return "passage";
    }

    @Override
    public String summary() {
        return "whether a bar passes the sound-hole, where and at which turn, and the thickest bar for every width";
    }

    @Override
    public String example() {
        return PassageDocument.EXAMPLE;
    }

    @Override
    public String keys() {
        return """
                  outline_mm    the edge of the hole: 3 to 2000 points [x,y] in order round it, the first not repeated
                  section_mm    of a straight bar pushed square through the plate: width and thickness
                  clearance_mm  optional: air wanted on every side, usual 0.3
                  plate_mm      optional: thickness of the plate at the hole, for the lean; usual 2.7

                The answer holds passes (with the clearance); place with x_mm, y_mm and turn_deg of the width from the x
                axis towards the y axis, or null when the bar does not fit even without air; air_mm on all sides at the best
                place, negative when so much must come off each side; spare_mm, how far each side alone could go out;
                largest_thickness_for_width_mm and largest_width_for_thickness_mm, without air; lean_deg, how far the bar may
                lean flat and on_edge; frontier_mm, pairs [width, thickness]; and caveats.
                """;
    }

    @Override
    public Reply answer(DocumentReader question) {
        PassageDocument document = PassageDocument.read(question);
        if (question.hasProblems()) {
            return new Reply.Refused(question.problems());
        }
        PassageAnswer answer = SectionPassage.of(document.question());
        if (answer instanceof SectionPassage passage) {
            return new Reply.Answered(answered(document, passage));
        }
        question.refuseAll(((PassageRefused) answer).problems());
        return new Reply.Refused(question.problems());
    }

    private static AnswerDocument answered(PassageDocument document, SectionPassage passage) {
        AnswerDocument answer = new AnswerDocument().put("passes", passage.passes());
        answer.putObject("place", passage.findPlace().map(PassageVerb::place));
        answer.put("air_mm", passage.findMost(), MostAir::air_mm);
        answer.putObject("spare_mm", passage.findSpare().map(PassageVerb::spare));
        answer.put("largest_thickness_for_width_mm", passage.findLargestThickness(), PassageVerb::other_mm);
        answer.put("largest_width_for_thickness_mm", passage.findLargestWidth(), PassageVerb::other_mm);
        answer.put(
                "lean_deg",
                new AnswerDocument()
                        .put("flat", passage.findLeanFlat(), Angle::deg)
                        .put("on_edge", passage.findLeanOnEdge(), Angle::deg));
        answer.putRows("frontier_mm", frontier(passage));
        return answer.putTexts("caveats", caveats(document));
    }

    private static AnswerDocument place(PlacedSection place) {
        return new AnswerDocument()
                .put("x_mm", place.centre().x_mm())
                .put("y_mm", place.centre().y_mm())
                .put("turn_deg", place.turn_deg());
    }

    private static AnswerDocument spare(Spare spare) {
        return new AnswerDocument()
                .put("start", spare.start_mm())
                .put("end", spare.end_mm())
                .put("below", spare.below_mm())
                .put("above", spare.above_mm());
    }

    private static double other_mm(PlacedSection placed) {
        return placed.section().thickness_mm();
    }

    private static List<List<Double>> frontier(SectionPassage passage) {
        return passage.frontier().sections().stream()
                .map(section -> List.of(section.width_mm(), section.thickness_mm()))
                .toList();
    }

    private static List<String> caveats(PassageDocument document) {
        List<String> caveats = new ArrayList<>();
        caveats.add("The outline counts as exact; take what it was traced with off every margin.");
        caveats.add(
                "Every pair of the frontier is within 0.05 mm of the most that passes; between two pairs the most lies in the"
                        + " box they span.");
        if (document.plateAssumed()) {
            caveats.add("plate_mm was not given; the lean is reckoned for a plate of 2.7 mm.");
        }
        return caveats;
    }
}
