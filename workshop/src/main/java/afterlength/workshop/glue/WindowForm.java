package afterlength.workshop.glue;

import afterlength.craft.glue.PotHeat;
import afterlength.craft.glue.Spread;
import afterlength.craft.units.Length;
import afterlength.craft.units.Temperature;
import afterlength.craft.wood.WoodHeat;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Typed;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads how glue is spread. The names of the fields are the keys of the verb. */
final class WindowForm {
    static final List<Choice> WOODS = List.of(new Choice("spruce", "spruce"), new Choice("maple", "maple"));
    static final List<Choice> FACES = List.of(
            new Choice("one", "the glue lies open on one face"), new Choice("both", "the joint is closed at once"));

    private WindowForm() {}

    static Typed usual() {
        return Typed.known(usualFields());
    }

    static Map<String, String> usualFields() {
        return Map.of(
                "glue_C", "60",
                "wood_C", "20",
                "film_mm", "0.2",
                "water", "2",
                "wood", "spruce",
                "faces", "one",
                "gel_C", "32",
                "plate_mm", "2.5",
                "room_C", "20");
    }

    static Optional<Spread> read(Typed typed) {
        double glue_C = typed.requiredDecimal("glue_C", "The glue", "°C", 20, PotHeat.REFUSED_ABOVE_C);
        double wood_C = typed.requiredDecimal("wood_C", "The parts", "°C", -5, 60);
        double film_mm = typed.requiredDecimal("film_mm", "The film", "mm", 0.01, 2);
        double water = typed.requiredDecimal("water", "The water for one part of glue", "parts", 0.5, 10);
        double gel_C = typed.requiredDecimal("gel_C", "The gel point", "°C", 20, 50);
        double room_C = typed.requiredDecimal("room_C", "The room", "°C", -5, 60);
        Double plate_mm = typed.decimal("plate_mm", "The thickness of the part", "mm", 0.5, 100);
        oneOf(typed, "wood", "The wood", WOODS);
        oneOf(typed, "faces", "How the glue lies", FACES);
        if (!typed.sound()) {
            return Optional.empty();
        }
        return Optional.of(new Spread(
                Temperature.ofCelsius(glue_C),
                Temperature.ofCelsius(wood_C),
                Length.ofMm(film_mm),
                1 / water,
                typed.raw("wood").equals("spruce") ? WoodHeat.SPRUCE : WoodHeat.MAPLE,
                typed.raw("faces").equals("both"),
                Temperature.ofCelsius(gel_C),
                Optional.ofNullable(plate_mm).map(Length::ofMm),
                Temperature.ofCelsius(room_C)));
    }

    private static void oneOf(Typed typed, String name, String label, List<Choice> permitted) {
        if (permitted.stream().noneMatch(choice -> choice.value().equals(typed.raw(name)))) {
            typed.note(name, label + " is not chosen. Choose one.");
        }
    }
}
