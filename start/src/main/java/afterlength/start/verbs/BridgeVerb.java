package afterlength.start.verbs;

import afterlength.craft.setup.Bridge;
import afterlength.craft.setup.BridgeAnswer;
import afterlength.craft.setup.BridgeRefused;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.SeatedString;
import afterlength.start.document.AnswerDocument;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import afterlength.workshop.setup.BridgeWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The bridge to cut from the measures of an instrument. */
final class BridgeVerb implements Verb {
    @Override
    public String name() {
        return "bridge";
    }

    @Override
    public String summary() {
        return "the bridge to cut: where every string lies across, and how high the wood stands under it";
    }

    @Override
    public String example() {
        return BridgeDocument.EXAMPLE;
    }

    @Override
    public String keys() {
        return BridgeDocument.KEYS + """

                The answer holds strings, each with name, bridge_y_mm (across, treble side positive), underside_mm (over the
                board line), wood_height_mm (over the belly) and board_end_clearance_mm; then centre_height_mm, highest_mm,
                highest_at_y_mm, height_plus_minus_mm for the usual reading errors of the bench, and caveats.
                """;
    }

    @Override
    public Reply answer(DocumentReader question) {
        BridgeDocument document = BridgeDocument.read(question);
        BridgeAnswer answer = Bridge.shape(document.inputs());
        if (answer instanceof BridgeRefused refused) {
            question.refuseAll(refused.problems());
        }
        if (question.hasProblems()) {
            return new Reply.Refused(question.problems());
        }
        return new Reply.Answered(answered((BridgeShape) answer, document.caveats()));
    }

    @Override
    public boolean draws() {
        return true;
    }

    @Override
    public Optional<Sheet> findSheet(DocumentReader answered) {
        BridgeDocument document = BridgeDocument.read(answered);
        return Bridge.shape(document.inputs()) instanceof BridgeShape shape
                ? Optional.of(new BridgeSheetOfVerb(shape, document))
                : Optional.empty();
    }

    private static AnswerDocument answered(BridgeShape shape, List<String> caveatsOfDocument) {
        List<String> caveats = new ArrayList<>(caveatsOfDocument);
        shape.caveats().forEach(caveat -> caveats.add(BridgeWords.of(caveat)));
        return new AnswerDocument()
                .putObjects(
                        "strings",
                        shape.strings().stream().map(BridgeVerb::seated).toList())
                .put("centre_height_mm", shape.centreHeight().mm())
                .put("highest_mm", shape.highest().mm())
                .put("highest_at_y_mm", shape.highestAtY().mm())
                .put("height_plus_minus_mm", shape.heightPlusMinus().mm())
                .putTexts("caveats", caveats);
    }

    private static AnswerDocument seated(SeatedString string) {
        return new AnswerDocument()
                .put("name", string.name())
                .put("bridge_y_mm", string.bridgeY().mm())
                .put("underside_mm", string.underside().mm())
                .put("wood_height_mm", string.woodHeight().mm())
                .put("board_end_clearance_mm", string.boardEndClearance().mm());
    }
}
