package afterlength.craft.wood;

import java.util.List;
import java.util.Locale;

/** What has to be said beside a number about wood: the facts as a record, and the one wording that page, paper and verb share. */
public sealed interface WoodCaveat {
    /** The caveats of every value taken from the moisture curve. */
    List<WoodCaveat> OF_THE_CURVE = List.of(new CurveUncertainty(), new Hysteresis(), new SlowToFollow());

    /** The caveat in a whole sentence. */
    String text();

    /** Two published curves lie apart by about this much. */
    record CurveUncertainty() implements WoodCaveat {
        @Override
        public String text() {
            return "The moisture curve is uncertain by about ±" + EquilibriumMoisture.MODEL_UNCERTAINTY_PCT
                    + " % moisture content.";
        }
    }

    /** Wood that dries to a climate holds more water than wood that was wetted to it. */
    record Hysteresis() implements WoodCaveat {
        @Override
        public String text() {
            return "Wood that is drying stays somewhat damper than this; wood that is taking up moisture, somewhat drier.";
        }
    }

    /** An equilibrium is where the wood is going, not where it is. */
    record SlowToFollow() implements WoodCaveat {
        @Override
        public String text() {
            return "This is where the wood settles in time; a plate follows the air over hours to days, slower under varnish.";
        }
    }

    /** A moisture content lies where the coefficients of movement are not valid. */
    record OutsideMovementRange(double moisture_pct) implements WoodCaveat {
        @Override
        public String text() {
            return String.format(
                    Locale.ROOT,
                    "Moisture content %.1f %% lies outside %.0f to %.0f %%, where the coefficients of movement are valid; "
                            + "take the change of width as a rough guide.",
                    moisture_pct,
                    WidthChange.LOWEST_VALID_PCT,
                    WidthChange.HIGHEST_VALID_PCT);
        }
    }

    /** One mean per species was read, but no spread. */
    record OneMeanOnly(Wood wood) implements WoodCaveat {
        @Override
        public String text() {
            return "For " + wood.species()
                    + " one mean coefficient was read, so low and high are the same here; single pieces differ from it.";
        }
    }

    /** A spread was read, but no mean. */
    record MiddleOfSpread(Wood wood) implements WoodCaveat {
        @Override
        public String text() {
            return "For " + wood.species() + " a spread was read but no mean; typical is the middle of the spread.";
        }
    }

    /** A plate held at its edges moves less and is stressed instead. */
    record FreePlate() implements WoodCaveat {
        @Override
        public String text() {
            return "The change is that of a free plate; a plate glued at its edges moves less and is stressed instead.";
        }
    }

    /** How much of a movement reaches a crack, and how much of a stress creep leaves, was never published. */
    record RestraintUnknown() implements WoodCaveat {
        @Override
        public String text() {
            return "How much of the movement reaches a crack, and how much stress the wood keeps, has no published value; the band "
                    + "shows what is possible, and its upper end is more than a real plate does.";
        }
    }

    /** The diffusion of spruce without air film, varnish and case. */
    record ShortestTime() implements WoodCaveat {
        @Override
        public String text() {
            return "The plate is reckoned as bare spruce; still air, varnish, a closed case and other woods make it slower.";
        }
    }

    /** A filtered series does not know what was before it. */
    record StartUnknown(double hours) implements WoodCaveat {
        @Override
        public String text() {
            return String.format(
                    Locale.ROOT,
                    "What the plate had been through before the record and before the end of each gap is not known; its moisture "
                            + "is worth reading after about %.0f hours.",
                    hours);
        }
    }
}
