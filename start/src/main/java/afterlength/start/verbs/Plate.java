package afterlength.start.verbs;

import afterlength.craft.units.Length;
import afterlength.craft.units.MoistureContent;
import afterlength.craft.wood.Cut;
import afterlength.craft.wood.WidthChange;
import afterlength.craft.wood.Wood;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Range;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The three keys that describe a plate. They belong together: one without the others is a problem, none is no plate. */
record Plate(Length width, Wood wood, Cut cut) {
    /** Wider than any plate of a double bass. */
    private static final double WIDEST_MM = 2000;

    static Optional<Plate> find(DocumentReader document) {
        if (!document.hasAny("width_mm", "species", "cut")) {
            return Optional.empty();
        }
        double width_mm = document.get("width_mm").asNumber(Range.positive(WIDEST_MM, "mm"));
        Optional<Wood> wood = document.get("species").asOneOf(List.of(Wood.values()), Wood::species);
        Optional<Cut> cut = document.get("cut").asOneOf(List.of(Cut.values()), Plate::word);
        boolean read = Double.isFinite(width_mm) && wood.isPresent() && cut.isPresent();
        return read ? Optional.of(new Plate(Length.ofMm(width_mm), wood.get(), cut.get())) : Optional.empty();
    }

    WidthChange change(MoistureContent from, MoistureContent to) {
        return WidthChange.of(width, wood, cut, from, to);
    }

    private static String word(Cut cut) {
        return cut.name().toLowerCase(Locale.ROOT);
    }
}
