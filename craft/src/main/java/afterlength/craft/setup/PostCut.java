package afterlength.craft.setup;

import afterlength.craft.units.Length;
import afterlength.craft.units.PlainNumber;
import afterlength.craft.units.Problem;
import java.util.List;

/**
 * Length and ends of a post that stands square to the gluing planes: {@code ribs + inside of belly + inside of back}, each inside
 * being the outside less the thickness along its normal. The cut ends lie on the inner surfaces.
 *
 * <p>Valid where both plates are of even thickness about the post. Left out: the give of the plates under the post and the
 * strings; the post is fitted by hand to firm but not tight, and only a trial shows it.
 *
 * @param length along the axis
 * @param plusMinus of the length, readings taken as independent
 * @param longestSide the longest line on the outside of the post
 */
public record PostCut(
        PostInputs inputs, Length length, Length plusMinus, Length longestSide, PostEnd belly, PostEnd back)
        implements PostAnswer {

    public static PostAnswer of(PostInputs inputs) {
        List<Problem> problems = PostChecks.problems(inputs);
        return problems.isEmpty() ? cut(inputs) : new PostRefused(problems);
    }

    private static PostAnswer cut(PostInputs inputs) {
        InnerSurface belly = InnerSurface.of(inputs.belly(), inputs.errors());
        InnerSurface back = InnerSurface.of(inputs.back(), inputs.errors());
        double length_mm = inputs.ribHeight_mm() + belly.height_mm() + back.height_mm();
        if (length_mm <= 0) {
            return new PostRefused(List.of(new Problem(
                    "/rib_height_mm",
                    inputs.ribHeight_mm(),
                    "The post would be " + PlainNumber.of(length_mm, "mm")
                            + " long; it must be more than 0 mm. Measure heights over the gluing planes, and the ribs between"
                            + " them.")));
        }
        double slope = Math.hypot(belly.slopeAlong() + back.slopeAlong(), belly.slopeAcross() + back.slopeAcross());
        return new PostCut(
                inputs,
                Length.ofMm(length_mm),
                Length.ofMm(plusMinus_mm(inputs, belly, back)),
                Length.ofMm(length_mm + slope * inputs.diameter_mm() / 2),
                belly.end(),
                back.end());
    }

    private static double plusMinus_mm(PostInputs inputs, InnerSurface belly, InnerSurface back) {
        return Math.hypot(inputs.errors().rib_mm(), Math.hypot(belly.heightError_mm(), back.heightError_mm()));
    }
}
