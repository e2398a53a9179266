package afterlength.start.demo;

import static afterlength.workshop.examination.Quantity.BOARD_END_CLEARANCE_BASS;
import static afterlength.workshop.examination.Quantity.BOARD_END_CLEARANCE_TREBLE;
import static afterlength.workshop.examination.Quantity.BOARD_LENGTH;
import static afterlength.workshop.examination.Quantity.BOARD_RADIUS;
import static afterlength.workshop.examination.Quantity.BODY_LENGTH;
import static afterlength.workshop.examination.Quantity.BRIDGE_HEIGHT;
import static afterlength.workshop.examination.Quantity.BRIDGE_SPACING;
import static afterlength.workshop.examination.Quantity.NUT_CLEARANCE_BASS;
import static afterlength.workshop.examination.Quantity.NUT_CLEARANCE_TREBLE;
import static afterlength.workshop.examination.Quantity.NUT_SPACING;
import static afterlength.workshop.examination.Quantity.PROJECTION;
import static afterlength.workshop.examination.Quantity.SPEAKING_LENGTH;
import static afterlength.workshop.examination.Quantity.STOP;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.Board;
import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.ClearanceConvention;
import afterlength.craft.setup.FittedString;
import afterlength.craft.setup.RadiusCrown;
import afterlength.craft.setup.StringSpacing;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.setup.Setup;
import afterlength.workshop.setup.SetupMoment;
import java.time.Instant;
import java.util.List;

/** The viola's measures and set-up, as it came and as it goes home. Invented figures of a likely size. */
final class ViolaSetUp {
    private static final double CAME_C = 19.5;
    private static final double CAME_PCT = 41;
    private static final double GOES_C = 20.5;
    private static final double GOES_PCT = 48;

    private ViolaSetUp() {}

    static void measureAsItCame(DemoVisit story) {
        Moment before = Moment.BEFORE;
        story.measure(before, BODY_LENGTH, 402.5, 0.5, CAME_C, CAME_PCT);
        story.measure(before, STOP, 218, 0.5, CAME_C, CAME_PCT);
        story.measure(before, SPEAKING_LENGTH, 371, 0.5, CAME_C, CAME_PCT);
        story.measure(before, BOARD_LENGTH, 306, 0.5, CAME_C, CAME_PCT);
        story.measure(before, BOARD_RADIUS, 42, 1, CAME_C, CAME_PCT);
        story.measure(before, NUT_SPACING, 17.2, 0.2, CAME_C, CAME_PCT);
        story.measure(before, BRIDGE_SPACING, 36, 0.3, CAME_C, CAME_PCT);
        story.measure(before, NUT_CLEARANCE_BASS, 0.6, 0.1, CAME_C, CAME_PCT);
        story.measure(before, NUT_CLEARANCE_TREBLE, 0.45, 0.1, CAME_C, CAME_PCT);
        story.measure(before, BOARD_END_CLEARANCE_BASS, 3.4, 0.2, CAME_C, CAME_PCT);
        story.measure(before, BOARD_END_CLEARANCE_TREBLE, 2.6, 0.2, CAME_C, CAME_PCT);
        story.measure(before, PROJECTION, 31.8, 0.3, CAME_C, CAME_PCT);
        story.measure(before, BRIDGE_HEIGHT, 33.4, 0.2, CAME_C, CAME_PCT);
    }

    static void keep(DemoStores stores, DemoVisit story) {
        Instant now = stores.clock().instant();
        BridgeInputs came = inputs(36, new BassTreble(3.4, 2.6), 31.8, 42);
        BridgeInputs goes = inputs(37, new BassTreble(6.0, 4.6), 31.6, 46);
        stores.setups().save(new Setup(0, story.id(), SetupMoment.BEFORE, came, now, story.hand()));
        stores.setups().save(new Setup(0, story.id(), SetupMoment.AFTER, goes, now, story.hand()));
        measureAsItGoes(story);
    }

    private static void measureAsItGoes(DemoVisit story) {
        Moment after = Moment.AFTER;
        story.measure(after, SPEAKING_LENGTH, 371, 0.5, GOES_C, GOES_PCT);
        story.measure(after, BRIDGE_SPACING, 37, 0.3, GOES_C, GOES_PCT);
        story.measure(after, BOARD_END_CLEARANCE_BASS, 5.9, 0.2, GOES_C, GOES_PCT);
        story.measure(after, BOARD_END_CLEARANCE_TREBLE, 4.6, 0.2, GOES_C, GOES_PCT);
        story.measure(after, PROJECTION, 31.6, 0.3, GOES_C, GOES_PCT);
        story.measure(after, BRIDGE_HEIGHT, 38.4, 0.2, GOES_C, GOES_PCT);
    }

    private static BridgeInputs inputs(
            double bridgeSpacing_mm, BassTreble clearance_mm, double projection_mm, double crownRadius_mm) {
        return new BridgeInputs(
                371,
                Board.ofOneRadius(306, 42),
                new StringSpacing.ByCentres(17.2),
                new StringSpacing.ByCentres(bridgeSpacing_mm),
                new BassTreble(0.6, 0.45),
                clearance_mm,
                ClearanceConvention.SQUARE,
                projection_mm,
                BridgeInputs.USUAL_GROOVE_FRACTION,
                new RadiusCrown(crownRadius_mm),
                List.of(
                        FittedString.ofTension("C", 1.1, 55),
                        FittedString.ofTension("G", 0.85, 54),
                        FittedString.ofTension("D", 0.75, 52),
                        FittedString.ofTension("A", 0.65, 70)),
                null);
    }
}
