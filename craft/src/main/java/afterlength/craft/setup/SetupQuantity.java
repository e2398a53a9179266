package afterlength.craft.setup;

/** What a range common in the trade can be stated for. Lengths in millimetres, the string angle in degrees. */
public enum SetupQuantity {
    PROJECTION,
    CENTRE_HEIGHT,
    BOARD_END_CLEARANCE_BASS,
    BOARD_END_CLEARANCE_TREBLE,
    NUT_SPACING,
    BRIDGE_SPACING,
    BOARD_RADIUS,
    CROWN_RADIUS,
    SCOOP_BASS,
    SCOOP_TREBLE,
    STRING_ANGLE,
    AFTER_LENGTH,
    POST_DIAMETER,
    POST_BEHIND_FOOT
}
