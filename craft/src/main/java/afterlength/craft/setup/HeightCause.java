package afterlength.craft.setup;

import java.util.List;

/**
 * Why a string height or a projection can be off, in the order a bench checks it: what is quickest to see and to put right comes
 * first. The order is common practice; docs/sources.md#setup-height-causes names where single steps were read.
 */
public enum HeightCause {
    STRING_TYPE,
    BRIDGE_WARPED_OR_LEANING,
    NUT_HEIGHT,
    BOARD_SCOOP_RUTS_OR_WARP,
    NECK_DROP,
    ARCH_RISEN_OR_SUNK,
    OPEN_SEAMS,
    SEASON;

    public static List<HeightCause> listInOrderOfChecking() {
        return List.of(values());
    }
}
