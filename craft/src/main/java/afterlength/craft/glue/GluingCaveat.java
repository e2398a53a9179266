package afterlength.craft.glue;

import java.util.Locale;

/** What has to be said beside the seconds: the facts as a record, and the one wording that page, paper and verb share. */
public sealed interface GluingCaveat {
    String text();

    /** Sources of the gel point and of the conductivity of wood disagree. */
    record Disagreement(double gelSpread_C, double conductivity_pct) implements GluingCaveat {
        @Override
        public String text() {
            return String.format(
                    Locale.ROOT,
                    "Low and high hold a gel point %.0f °C higher and lower and wood that carries heat %.0f %% better and worse; "
                            + "sources disagree by that much.",
                    gelSpread_C,
                    conductivity_pct);
        }
    }

    /** What the reckoning does not know. */
    record LeftOut() implements GluingCaveat {
        @Override
        public String text() {
            return "Guidance only: evaporation cools a spread film further, squeeze-out thins it, and gelling takes time of its own. "
                    + "Try it on scrap.";
        }
    }

    /** No thickness was given. */
    record ThickWood() implements GluingCaveat {
        @Override
        public String text() {
            return "The wood is taken as thick; give the thickness of the plate when it is thinner than about 10 mm.";
        }
    }

    /** The half-space holds for this plate, so it answered. */
    record PlateThickEnough(double valid_s) implements GluingCaveat {
        @Override
        public String text() {
            return String.format(
                    Locale.ROOT,
                    "The far side of the plate notices nothing for %.1f s, longer than the window; it was reckoned as thick wood.",
                    valid_s);
        }
    }

    /** The half-space does not hold, so the plate was reckoned. */
    record PlateTooThin(double valid_s) implements GluingCaveat {
        @Override
        public String text() {
            return String.format(
                    Locale.ROOT,
                    "Reckoned as thick wood this would hold for the first %.1f s only; film and plate were reckoned together. Air "
                            + "behind the plate is taken to carry off %.0f W/m²K, half and double that in the band.",
                    valid_s,
                    PlateCurve.AIR_SIDE_W_M2K);
        }
    }

    /** The film and the plate meet above the gel point. */
    record DoesNotGelByWood(double settles_C) implements GluingCaveat {
        @Override
        public String text() {
            return String.format(
                    Locale.ROOT,
                    "Film and plate meet at %.1f °C; from there only the air of the room cools the glue, slowly and by a number that "
                            + "was not measured.",
                    settles_C);
        }
    }

    /** The pot is hotter than most sources allow. */
    record PotHot() implements GluingCaveat {
        @Override
        public String text() {
            return String.format(
                    Locale.ROOT,
                    "The glue is hotter than %.0f °C: it loses strength the longer it stands so. Aim at %.0f °C.",
                    PotHeat.WARN_ABOVE_C,
                    PotHeat.AIM_C);
        }
    }

    /** The part is cold. */
    record WarmTheParts() implements GluingCaveat {
        @Override
        public String text() {
            return String.format(
                    Locale.ROOT,
                    "The wood is colder than %.1f °C; warm the parts, which gives more time than a warm room.",
                    WorkingWindow.WARM_PARTS_BELOW_C);
        }
    }

    /** Hot glue scalds. */
    record Scalds() implements GluingCaveat {
        @Override
        public String text() {
            return "Hot glue scalds and sticks to the skin: heat it in a water bath, never over a flame, and keep cold water at hand.";
        }
    }
}
