package afterlength.craft.setup;

import static afterlength.craft.setup.SetupQuantity.AFTER_LENGTH;
import static afterlength.craft.setup.SetupQuantity.BOARD_END_CLEARANCE_BASS;
import static afterlength.craft.setup.SetupQuantity.BOARD_END_CLEARANCE_TREBLE;
import static afterlength.craft.setup.SetupQuantity.BOARD_RADIUS;
import static afterlength.craft.setup.SetupQuantity.BRIDGE_SPACING;
import static afterlength.craft.setup.SetupQuantity.CENTRE_HEIGHT;
import static afterlength.craft.setup.SetupQuantity.CROWN_RADIUS;
import static afterlength.craft.setup.SetupQuantity.NUT_SPACING;
import static afterlength.craft.setup.SetupQuantity.POST_BEHIND_FOOT;
import static afterlength.craft.setup.SetupQuantity.POST_DIAMETER;
import static afterlength.craft.setup.SetupQuantity.PROJECTION;
import static afterlength.craft.setup.SetupQuantity.SCOOP_BASS;
import static afterlength.craft.setup.SetupQuantity.SCOOP_TREBLE;
import static afterlength.craft.setup.SetupQuantity.STRING_ANGLE;

import java.util.Map;
import java.util.Optional;

/**
 * The table behind {@link CommonSetup}. Clearances span gut to steel strings. Where sources disagree (violin after-length, viola
 * board radius, cello scoop) the range holds them all. Sources: docs/sources.md#setup-board-retailer,
 * docs/sources.md#setup-projection-guide, docs/sources.md#mayson, docs/sources.md#bishopp-in-hart,
 * docs/sources.md#after-length-rule, docs/sources.md#viola-table, docs/sources.md#cello-clearance and
 * docs/sources.md#setup-common-practice.
 */
final class CommonRanges {
    private static final String COMMON = "setup-common-practice";
    private static final Map<CommonSetup, Map<SetupQuantity, CommonRange>> TABLE =
            Map.of(CommonSetup.VIOLIN, violin(), CommonSetup.VIOLA, viola(), CommonSetup.CELLO, cello());

    private CommonRanges() {}

    static Optional<CommonRange> find(CommonSetup row, SetupQuantity quantity) {
        return Optional.ofNullable(TABLE.getOrDefault(row, Map.of()).get(quantity));
    }

    private static Map<SetupQuantity, CommonRange> violin() {
        return Map.ofEntries(
                Map.entry(PROJECTION, new CommonRange(26, 28, "setup-board-retailer")),
                Map.entry(CENTRE_HEIGHT, new CommonRange(31, 35, "mayson")),
                Map.entry(BOARD_END_CLEARANCE_BASS, new CommonRange(4.0, 6.5, COMMON)),
                Map.entry(BOARD_END_CLEARANCE_TREBLE, new CommonRange(2.5, 4.5, COMMON)),
                Map.entry(NUT_SPACING, new CommonRange(16, 17, COMMON)),
                Map.entry(BRIDGE_SPACING, new CommonRange(33, 34.5, COMMON)),
                Map.entry(BOARD_RADIUS, new CommonRange(40, 43, COMMON)),
                Map.entry(CROWN_RADIUS, new CommonRange(40, 43, COMMON)),
                Map.entry(SCOOP_BASS, new CommonRange(0.6, 1.0, COMMON)),
                Map.entry(SCOOP_TREBLE, new CommonRange(0.2, 0.5, COMMON)),
                Map.entry(STRING_ANGLE, new CommonRange(154.3, 160, "bishopp-in-hart")),
                Map.entry(AFTER_LENGTH, new CommonRange(52.585, 56, "after-length-rule")),
                Map.entry(POST_DIAMETER, new CommonRange(6.0, 6.5, COMMON)),
                Map.entry(POST_BEHIND_FOOT, new CommonRange(1.5, 4, COMMON)));
    }

    private static Map<SetupQuantity, CommonRange> viola() {
        return Map.ofEntries(
                Map.entry(PROJECTION, new CommonRange(30, 33, "setup-projection-guide")),
                Map.entry(BOARD_END_CLEARANCE_BASS, new CommonRange(5.5, 6.8, COMMON)),
                Map.entry(BOARD_END_CLEARANCE_TREBLE, new CommonRange(3.8, 5.0, COMMON)),
                Map.entry(NUT_SPACING, new CommonRange(17, 18.5, COMMON)),
                Map.entry(BRIDGE_SPACING, new CommonRange(36, 39, COMMON)),
                Map.entry(BOARD_RADIUS, new CommonRange(37, 44, "viola-table")),
                Map.entry(POST_DIAMETER, new CommonRange(6.5, 8, COMMON)),
                Map.entry(POST_BEHIND_FOOT, new CommonRange(2, 4.5, COMMON)));
    }

    private static Map<SetupQuantity, CommonRange> cello() {
        return Map.ofEntries(
                Map.entry(PROJECTION, new CommonRange(79, 84, "setup-projection-guide")),
                Map.entry(CENTRE_HEIGHT, new CommonRange(85, 94, COMMON)),
                Map.entry(BOARD_END_CLEARANCE_BASS, new CommonRange(6.5, 8.2, "cello-clearance")),
                Map.entry(BOARD_END_CLEARANCE_TREBLE, new CommonRange(4.0, 5.5, "cello-clearance")),
                Map.entry(NUT_SPACING, new CommonRange(21, 23, COMMON)),
                Map.entry(BRIDGE_SPACING, new CommonRange(45, 49, COMMON)),
                Map.entry(BOARD_RADIUS, new CommonRange(58, 66, COMMON)),
                Map.entry(SCOOP_BASS, new CommonRange(0.4, 2.2, "cello-clearance")),
                Map.entry(SCOOP_TREBLE, new CommonRange(0.4, 1.4, "cello-clearance")),
                Map.entry(STRING_ANGLE, new CommonRange(150, 156, COMMON)),
                Map.entry(AFTER_LENGTH, new CommonRange(110, 118, COMMON)),
                Map.entry(POST_DIAMETER, new CommonRange(10.5, 12, COMMON)),
                Map.entry(POST_BEHIND_FOOT, new CommonRange(4, 8, COMMON)));
    }
}
