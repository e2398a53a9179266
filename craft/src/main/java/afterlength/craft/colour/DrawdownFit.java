package afterlength.craft.colour;

import java.util.List;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;

/**
 * What a colorant absorbs and scatters, from all its drawdowns together: least squares on the logarithms of K and S, with K asked to
 * run smoothly over the wavelengths and S more so and near a weak guess. Point by point ({@link KubelkaMunk#between}) the scatter of
 * a glaze cannot be found; smoothness is what a real colorant brings along. Four films do well: a half and a full coat over white,
 * one and two coats over black. Source: docs/sources.md#colour-study.
 */
public final class DrawdownFit {
    private static final int STEPS_AT_MOST = 200;

    private DrawdownFit() {}

    /**
     * Fits one colorant.
     *
     * @param drawdowns at least two, over grounds that differ, all at the same wavelengths
     * @param noise one standard deviation of a measured reflectance, such as 0.0015
     * @throws IllegalArgumentException when there are fewer than two, or their wavelengths differ
     */
    public static FittedColorant fit(String name, List<Drawdown> drawdowns, double noise, Saunderson surface) {
        DrawdownResiduals residuals = new DrawdownResiduals(drawdowns, noise, surface);
        RealVector fitted = solve(residuals);
        Colorant colorant = residuals.colorant(name, fitted);
        return new FittedColorant(colorant, refit(colorant, drawdowns, surface));
    }

    private static RealVector solve(DrawdownResiduals residuals) {
        MultivariateJacobianFunction model = residuals::valueAndSlopes;
        var problem = new LeastSquaresBuilder()
                .start(residuals.start())
                .model(model)
                .target(new ArrayRealVector(residuals.size()))
                .maxEvaluations(STEPS_AT_MOST)
                .maxIterations(STEPS_AT_MOST)
                .lazyEvaluation(false)
                .build();
        try {
            return new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(1e-8)
                    .withParameterRelativeTolerance(1e-8)
                    .optimize(problem)
                    .getPoint();
        } catch (MathIllegalStateException unsettled) {
            throw new IllegalArgumentException(
                    "the drawdowns do not settle on one film: " + unsettled.getMessage(), unsettled);
        }
    }

    private static List<Double> refit(Colorant colorant, List<Drawdown> drawdowns, Saunderson surface) {
        Viewing daylight = Viewing.under(Light.D65, colorant.wavelengths());
        return drawdowns.stream()
                .map(drawdown -> ColourDifference.of(
                        daylight.lab(drawdown.film()), daylight.lab(again(colorant, drawdown, surface))))
                .toList();
    }

    private static Spectrum again(Colorant colorant, Drawdown drawdown, Saunderson surface) {
        double[] reflectances = new double[colorant.wavelengths().count()];
        new FilmOnGround(drawdown.ground(), List.of(colorant), surface)
                .measure(new int[] {0}, new double[] {drawdown.thickness_um()}, reflectances);
        return Spectrum.of(colorant.wavelengths(), reflectances);
    }
}
