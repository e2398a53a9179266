package afterlength.craft.geometry;

/**
 * Measures of what is put on the body.
 *
 * @param neck_mm nut to upper edge of the body
 * @param boardLength_mm nut to lower end of the board
 * @param nutSpacing_mm outer strings at the nut, centre to centre
 * @param bridgeSpacing_mm outer strings on the bridge, centre to centre
 * @param bridgeWidth_mm over the feet
 * @param bridgeHeight_mm belly to top of the bridge on its centre line
 * @param afterLength_mm bridge to tailpiece
 * @param soundHole_mm upper to lower extreme of a sound-hole
 * @param eyeDistance_mm between the inner edges of the upper eyes
 * @param head_mm nut to top of the scroll
 */
public record FittingShape(
        double neck_mm,
        double boardLength_mm,
        double boardNutWidth_mm,
        double boardEndWidth_mm,
        double nutSpacing_mm,
        double bridgeSpacing_mm,
        double bridgeWidth_mm,
        double bridgeHeight_mm,
        double afterLength_mm,
        double tailpiece_mm,
        double soundHole_mm,
        double eyeDistance_mm,
        double ribHeight_mm,
        double head_mm) {
    FittingShape scaled(double factor) {
        return new FittingShape(
                neck_mm * factor,
                boardLength_mm * factor,
                boardNutWidth_mm * factor,
                boardEndWidth_mm * factor,
                nutSpacing_mm * factor,
                bridgeSpacing_mm * factor,
                bridgeWidth_mm * factor,
                bridgeHeight_mm * factor,
                afterLength_mm * factor,
                tailpiece_mm * factor,
                soundHole_mm * factor,
                eyeDistance_mm * factor,
                ribHeight_mm * factor,
                head_mm * factor);
    }
}
