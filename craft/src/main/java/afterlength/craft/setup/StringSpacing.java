package afterlength.craft.setup;

import java.util.List;

/** Where the strings lie across, at the nut or at the bridge, counted from bass to treble. */
public sealed interface StringSpacing {
    /** Lateral place of the centre of each string. */
    double[] places_mm(List<FittedString> strings);

    /**
     * Equal distances from centre to centre, evenly about the centre line.
     *
     * @param outer_mm between the centres of the outer strings
     */
    record ByCentres(double outer_mm) implements StringSpacing {
        @Override
        public double[] places_mm(List<FittedString> strings) {
            double[] places_mm = new double[strings.size()];
            for (int i = 0; i < places_mm.length; i++) {
                places_mm[i] = outer_mm * (2 * i - places_mm.length + 1) / (2.0 * (places_mm.length - 1));
            }
            return places_mm;
        }
    }

    /**
     * Equal free gaps from string to string: the step between two centres is the gap and half of either diameter.
     *
     * @param outer_mm between the centres of the outer strings
     */
    record ByGaps(double outer_mm) implements StringSpacing {
        @Override
        public double[] places_mm(List<FittedString> strings) {
            double gap_mm = gap_mm(strings);
            double[] places_mm = new double[strings.size()];
            places_mm[0] = -outer_mm / 2;
            for (int i = 1; i < places_mm.length; i++) {
                places_mm[i] = places_mm[i - 1] + gap_mm + halves_mm(strings, i);
            }
            return places_mm;
        }

        private double gap_mm(List<FittedString> strings) {
            double taken_mm = 0;
            for (int i = 1; i < strings.size(); i++) {
                taken_mm += halves_mm(strings, i);
            }
            return (outer_mm - taken_mm) / (strings.size() - 1);
        }

        private static double halves_mm(List<FittedString> strings, int i) {
            return (strings.get(i - 1).diameter_mm() + strings.get(i).diameter_mm()) / 2;
        }
    }

    /** Each string as measured from the centre line, negative to the bass side. */
    record Given(List<Double> y_mm) implements StringSpacing {
        public Given {
            y_mm = List.copyOf(y_mm);
        }

        @Override
        public double[] places_mm(List<FittedString> strings) {
            return y_mm.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }
}
