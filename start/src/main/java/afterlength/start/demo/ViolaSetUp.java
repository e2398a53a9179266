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
import afterlength.craft.setup.Waist;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.setup.BenchReading;
import afterlength.workshop.setup.Setup;
import afterlength.workshop.setup.SetupBench;
import afterlength.workshop.setup.SetupMoment;
import java.time.Instant;
import java.util.List;

/** The viola's measures and set-up, as it came and as it goes home. Invented figures of a likely size. */
final class ViolaSetUp {
    private static final double CAME_C = 19.5;
    private static final double CAME_PCT = 41;
    private static final double GOES_C = 20.5;
    private static final double GOES_PCT = 48;

    /** A crown of the shop's own, a little fuller on the treble side than an arc. */
    private static final String OWN_TEMPLATE = """
            -22; 2.0
            -18.5; 4.0
            -12; 6.1
            -6.2; 7.1
            0; 7.2
            6.2; 6.4
            12; 4.9
            18.5; 2.1
            22; 0.3""";

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
        SetupBench came = beside(inputs(36, new BassTreble(3.4, 2.6), 31.8, 44));
        SetupBench goes = beside(inputs(37, new BassTreble(6.0, 4.6), 31.6, 44))
                .withTemplate(OWN_TEMPLATE)
                .with(BenchReading.BOW_FORCE, 0.8);
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

    /** What else was measured. The plates fall to the tail where the post stands, a little behind the highest place of the arch. */
    private static SetupBench beside(BridgeInputs inputs) {
        return SetupBench.of(inputs)
                .withNotes(List.of("C3", "G3", "D4", "A4"))
                .with(BenchReading.AFTER_LENGTH, 62)
                .with(BenchReading.TAIL_HEIGHT, 20)
                .with(BenchReading.TAIL_SPACING, 30)
                .with(BenchReading.BOARD_SLOPE, 7)
                .with(BenchReading.HALF_FEET, 19)
                .with(BenchReading.POST_BEHIND, 3)
                .with(BenchReading.POST_INSIDE, 2)
                .with(BenchReading.POST_DIAMETER, 6.8)
                .with(BenchReading.POST_RIBS, 36.5)
                .with(BenchReading.BELLY_HEIGHT, 16.2)
                .with(BenchReading.BELLY_THICKNESS, 3.1)
                .with(BenchReading.BELLY_ALONG, -2)
                .with(BenchReading.BELLY_ACROSS, -6.5)
                .with(BenchReading.BACK_HEIGHT, 15.4)
                .with(BenchReading.BACK_THICKNESS, 4.2)
                .with(BenchReading.BACK_ALONG, -1.5)
                .with(BenchReading.BACK_ACROSS, -5);
    }

    private static BridgeInputs inputs(
            double bridgeSpacing_mm, BassTreble clearance_mm, double projection_mm, double crownRadius_mm) {
        return new BridgeInputs(
                371,
                Board.ofOneRadius(306, 42).withScoop(new BassTreble(0.9, 0.5)),
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
                new Waist(128, 14));
    }
}
