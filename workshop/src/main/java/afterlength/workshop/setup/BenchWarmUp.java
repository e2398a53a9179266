package afterlength.workshop.setup;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.Board;
import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.ClearanceConvention;
import afterlength.craft.setup.FittedString;
import afterlength.craft.setup.RadiusCrown;
import afterlength.craft.setup.StringSpacing;
import afterlength.craft.setup.Waist;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import java.util.List;
import java.util.Optional;

/**
 * Draws an invented bridge a few times while the shop opens, so that the first hand on the workbench does not wait for classes to be
 * loaded: the first even play takes some 60 ms, a warm one about 2 ms.
 */
public final class BenchWarmUp {
    private static final int TIMES = 5;

    private BenchWarmUp() {}

    /** Does so beside everything else; a program that ends meanwhile is not kept from it. */
    public static void begin() {
        Thread thread = new Thread(BenchWarmUp::draw, "workbench warm-up");
        thread.setDaemon(true);
        thread.start();
    }

    private static void draw() {
        for (int n = 0; n < TIMES; n++) {
            Typed typed = Typed.known(SetupTyped.of(SetupBench.of(invented())));
            Templates.text(LiveBench.of(typed, SetupMoment.AFTER, Optional.empty(), true));
        }
    }

    private static BridgeInputs invented() {
        return new BridgeInputs(
                328,
                Board.ofOneRadius(270, 42),
                new StringSpacing.ByCentres(16.5),
                new StringSpacing.ByCentres(33.5),
                new BassTreble(0.45, 0.3),
                new BassTreble(5.5, 3.5),
                ClearanceConvention.SQUARE,
                27,
                BridgeInputs.USUAL_GROOVE_FRACTION,
                new RadiusCrown(42),
                List.of(
                        FittedString.ofTension("1", 0.8, 45),
                        FittedString.ofTension("2", 0.7, 45),
                        FittedString.ofTension("3", 0.6, 55),
                        FittedString.ofTension("4", 0.3, 75)),
                new Waist(112, 11.5));
    }
}
