package afterlength.start.verbs;

import afterlength.craft.setup.FittedString;
import afterlength.craft.setup.StringPull;
import afterlength.craft.setup.StringSpacing;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.DocumentValue;
import afterlength.start.document.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The strings of an instrument from bass to treble, and how they are spread at nut and bridge. */
final class StringsDocument {
    private static final int MOST_STRINGS = 100;

    private final DocumentReader document;
    private final List<DocumentReader> strings;
    private final List<FittedString> fitted;
    private final boolean equalGaps;
    private final List<String> caveats = new ArrayList<>();

    private StringsDocument(DocumentReader document) {
        this.document = document;
        strings = document.get("strings").asList(0, MOST_STRINGS).stream()
                .map(DocumentValue::asObject)
                .toList();
        fitted = strings.stream().map(StringsDocument::fitted).toList();
        equalGaps = document.find("spacing")
                .flatMap(value -> value.asOneOf(List.of("centres", "gaps"), word -> word))
                .filter("gaps"::equals)
                .isPresent();
    }

    static StringsDocument read(DocumentReader document) {
        return new StringsDocument(document);
    }

    List<FittedString> fitted() {
        return fitted;
    }

    List<String> caveats() {
        return caveats;
    }

    /** Spacing at the nut or at the bridge: the places of the strings where they are given, or one figure for all. */
    StringSpacing spacing(String end) {
        String ofEach = end + "_y_mm";
        String ofAll = end + "_spacing_mm";
        boolean placed = strings.stream().map(string -> string.find(ofEach)).anyMatch(Optional::isPresent);
        if (!placed) {
            double outer_mm = document.get(ofAll).asNumber(Range.any("mm"));
            return equalGaps ? new StringSpacing.ByGaps(outer_mm) : new StringSpacing.ByCentres(outer_mm);
        }
        document.find(ofAll).ifPresent(spacing -> {
            spacing.asNumber(Range.any("mm"));
            caveats.add(ofAll + " was not used, because the strings have " + ofEach + ".");
        });
        return new StringSpacing.Given(strings.stream()
                .map(string -> string.get(ofEach).asNumber(Range.any("mm")))
                .toList());
    }

    private static FittedString fitted(DocumentReader string) {
        return new FittedString(
                string.get("name").asText(), string.get("diameter_mm").asNumber(Range.any("mm")), pull(string));
    }

    private static StringPull pull(DocumentReader string) {
        Optional<Double> tension_N = string.find("tension_N").map(value -> value.asNumber(Range.any("N")));
        if (!string.hasAny("linear_density_g_m", "frequency_Hz")) {
            return tension_N.<StringPull>map(StringPull.Tension::new).orElseGet(StringPull.Unknown::new);
        }
        if (tension_N.isPresent()) {
            string.refuse(
                    "/tension_N",
                    tension_N.get(),
                    "A string has either tension_N or linear_density_g_m with frequency_Hz. Leave out one of them.");
        }
        return new StringPull.DensityAndPitch(
                string.get("linear_density_g_m").asNumber(Range.any("g/m")),
                string.get("frequency_Hz").asNumber(Range.any("Hz")));
    }
}
