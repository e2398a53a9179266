package afterlength.craft.glue;

import afterlength.craft.units.Length;
import afterlength.craft.units.Temperature;
import afterlength.craft.wood.WoodHeat;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Answers one working window: the three ends of the band by one model, chosen for all of them together. */
final class WindowReckoning {
    /** Thick wood is a fair picture until 0.3·L²/α. Source: docs/sources.md#lumped-layer. */
    private static final double VALID_FOURIER = 0.3;

    private static final int POINTS = 60;

    private final Spread typical;
    private final double validFor_s;

    WindowReckoning(Spread typical) {
        this.typical = typical;
        this.validFor_s = typical.plate().map(this::validFor_s).orElse(Double.POSITIVE_INFINITY);
    }

    private double validFor_s(Length plate) {
        double plate_m = plate.mm() / 1000;
        return VALID_FOURIER * plate_m * plate_m / typical.wood().diffusivity_m2_s();
    }

    WorkingWindow.Known answer() {
        WindowSeconds thick = window(GluingModel.HALF_SPACE);
        boolean fits = thick.high_s().orElse(Double.POSITIVE_INFINITY) <= validFor_s;
        GluingModel model = fits || Double.isInfinite(validFor_s) ? GluingModel.HALF_SPACE : GluingModel.PLATE;
        WindowSeconds seconds = model == GluingModel.HALF_SPACE ? thick : window(model);
        return new WorkingWindow.Known(seconds, model, validFor_s, cooling(model, seconds), caveats(model));
    }

    private WindowSeconds window(GluingModel model) {
        double spread = WoodHeat.CONDUCTIVITY_SPREAD_PCT / 100;
        return new WindowSeconds(
                seconds(model, +Spread.GEL_SPREAD_C, 1 + spread, 2),
                seconds(model, 0, 1, 1),
                seconds(model, -Spread.GEL_SPREAD_C, 1 - spread, 0.5));
    }

    private OptionalDouble seconds(GluingModel model, double gelShift_C, double conductivityFactor, double airFactor) {
        Temperature gel = Temperature.ofCelsius(typical.gel().celsius() + gelShift_C);
        Spread spread = typical.with(gel, typical.wood().withConductivityTimes(conductivityFactor));
        return curve(model, spread, airFactor).findTime_s(gel.celsius());
    }

    private static FilmCurve curve(GluingModel model, Spread spread, double airFactor) {
        return model == GluingModel.HALF_SPACE
                ? new ThickWoodCurve(spread)
                : new PlateCurve(spread, PlateCurve.AIR_SIDE_W_M2K * airFactor, 1);
    }

    /** A point now, and others closer together at the start, where the film cools fastest. */
    private List<FilmAt> cooling(GluingModel model, WindowSeconds seconds) {
        FilmCurve curve = curve(model, typical, 1);
        double end_s = seconds.high_s().orElse(seconds.typical_s().orElse(WindowSeconds.LONGEST_S / 5) * 2);
        List<FilmAt> points = new ArrayList<>();
        for (int n = 0; n <= POINTS; n++) {
            double part = (double) n / POINTS;
            double time_s = Math.max(1, end_s * 1.15) * part * part;
            points.add(new FilmAt(time_s, n == 0 ? typical.glue().celsius() : curve.at_C(time_s)));
        }
        return points;
    }

    private List<GluingCaveat> caveats(GluingModel model) {
        List<GluingCaveat> caveats = new ArrayList<>();
        caveats.add(new GluingCaveat.Scalds());
        caveats.add(new GluingCaveat.LeftOut());
        caveats.add(new GluingCaveat.Disagreement(Spread.GEL_SPREAD_C, WoodHeat.CONDUCTIVITY_SPREAD_PCT));
        caveats.add(aboutTheModel(model));
        double settles_C = settles_C();
        if (typical.plate().isPresent() && settles_C > typical.gel().celsius() - Spread.GEL_SPREAD_C) {
            caveats.add(new GluingCaveat.DoesNotGelByWood(settles_C));
        }
        if (PotHeat.of(typical.glue()) == PotHeat.HOT) {
            caveats.add(new GluingCaveat.PotHot());
        }
        if (typical.part().celsius() < WorkingWindow.WARM_PARTS_BELOW_C) {
            caveats.add(new GluingCaveat.WarmTheParts());
        }
        return caveats;
    }

    private GluingCaveat aboutTheModel(GluingModel model) {
        if (typical.plate().isEmpty()) {
            return new GluingCaveat.ThickWood();
        }
        return model == GluingModel.PLATE
                ? new GluingCaveat.PlateTooThin(validFor_s)
                : new GluingCaveat.PlateThickEnough(validFor_s);
    }

    /** Where film and plate meet when no heat leaves: the heat of both, shared. */
    double settles_C() {
        GlueLiquid glue = GlueLiquid.of(typical.glueToWater());
        double film = glue.density_kg_m3() * glue.heat_J_kgK() * typical.film_m();
        double plate = typical.wood().density_kg_m3()
                * typical.wood().heat_J_kgK()
                * typical.plate().map(Length::mm).orElse(0.0)
                / 1000;
        return (film * typical.glue().celsius() + plate * typical.part().celsius()) / (film + plate);
    }
}
