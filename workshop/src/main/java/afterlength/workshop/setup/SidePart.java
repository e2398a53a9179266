package afterlength.workshop.setup;

import afterlength.craft.setup.AfterLength;
import afterlength.craft.setup.SetupQuantity;
import afterlength.craft.units.Length;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.SvgPen;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The instrument from the side: board line, strings, projection, string angle and after-length. */
record SidePart(BenchTail tail) {
    String drawing() {
        return SvgPen.forScreen(SideView.of(tail));
    }

    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        angle().ifPresentOrElse(sentences::add, () -> sentences.add(missing()));
        sentences.add(afterLength());
        return sentences;
    }

    private Optional<String> angle() {
        int last = tail.shape().strings().size() - 1;
        return tail.findBreak(0)
                .flatMap(bass -> tail.findBreak(last)
                        .map(treble -> "Over the bridge the strings bend to "
                                + Figures.fixed(bass.findStringAngle_deg().orElseThrow(), 1) + "° on the bass side and "
                                + Figures.fixed(treble.findStringAngle_deg().orElseThrow(), 1)
                                + "° on the treble side, ± 1° when slope and heights are read to half a degree and half a millimetre."
                                + common(SetupQuantity.STRING_ANGLE, "°")));
    }

    private String missing() {
        return "The string angle follows when these are measured: "
                + String.join(
                        ", ",
                        tail.missingForAngle().stream()
                                .map(reading -> reading.label().toLowerCase(Locale.ROOT))
                                .toList())
                + ".";
    }

    private String afterLength() {
        AfterLength rules = AfterLength.of(Length.ofMm(tail.shape().inputs().speakingLength_mm()));
        String measured = tail.bench()
                .find(BenchReading.AFTER_LENGTH)
                .map(value -> "The after-length is " + Figures.mm(value, 1) + ". ")
                .orElse("");
        return measured + "Two printed rules give " + Figures.mm(rules.sixth().mm(), 1)
                + " (a sixth of the string) and "
                + Figures.mm(rules.golden().mm(), 1) + " (0.1618 of it); measured instruments keep either and neither."
                + common(SetupQuantity.AFTER_LENGTH, " mm");
    }

    private String common(SetupQuantity quantity, String unit) {
        return tail.shape()
                .findCommonSetup()
                .flatMap(row -> row.find(quantity))
                .map(range ->
                        " Common is " + Figures.plain(range.low()) + " to " + Figures.plain(range.high()) + unit + ".")
                .orElse("");
    }
}
