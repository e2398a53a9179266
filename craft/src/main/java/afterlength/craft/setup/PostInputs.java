package afterlength.craft.setup;

/**
 * Where the post stands and what it stands between. The place is recorded, not prescribed: it is a judgement of ear and plates.
 *
 * @param behindFoot_mm from the back edge of the treble foot to the post
 * @param insideFoot_mm from the outer end of that foot inwards to the outer side of the post
 * @param diameter_mm of the post
 * @param ribHeight_mm between the two gluing planes at the post
 */
public record PostInputs(
        double behindFoot_mm,
        double insideFoot_mm,
        double diameter_mm,
        double ribHeight_mm,
        Plate belly,
        Plate back,
        PostErrors errors) {}
