package afterlength.workshop.setup;

import afterlength.craft.setup.StringSpacing;
import afterlength.workshop.desk.Choice;
import java.util.Arrays;
import java.util.List;

/** How the places of the strings between the two outer ones are found. */
enum SpacingKind {
    CENTRES("equal from centre to centre"),
    GAPS("equal gaps"),
    GIVEN("string by string");

    static final List<Choice> CHOICES = Arrays.stream(values())
            .map(kind -> new Choice(kind.name(), kind.words))
            .toList();

    private final String words;

    SpacingKind(String words) {
        this.words = words;
    }

    static SpacingKind of(StringSpacing spacing) {
        if (spacing instanceof StringSpacing.Given) {
            return GIVEN;
        }
        return spacing instanceof StringSpacing.ByGaps ? GAPS : CENTRES;
    }

    /** As a form sends it; by centres when it sends nothing. */
    static SpacingKind read(String typed) {
        return Arrays.stream(values())
                .filter(kind -> kind.name().equals(typed))
                .findFirst()
                .orElse(CENTRES);
    }

    StringSpacing spacing(double outer_mm, List<Double> places_mm) {
        return switch (this) {
            case CENTRES -> new StringSpacing.ByCentres(outer_mm);
            case GAPS -> new StringSpacing.ByGaps(outer_mm);
            case GIVEN -> new StringSpacing.Given(places_mm);
        };
    }
}
