package afterlength.workshop.plan;

import java.util.ArrayList;
import java.util.List;

/** Cuts hands-on minutes into pieces of about the same length, none longer than hands can work without a break. */
final class StepCut {
    /** Longer work is laid down and taken up again; our own choice. */
    static final int MOST_MIN = 120;

    private StepCut() {}

    static List<Integer> of(int hands_min, int most_min) {
        int most = Math.max(BenchTime.GRID_MIN, most_min / BenchTime.GRID_MIN * BenchTime.GRID_MIN);
        int count = Math.max(1, (hands_min + most - 1) / most);
        List<Integer> cut = new ArrayList<>();
        int left = hands_min;
        for (int n = count; n > 0; n--) {
            int size = BenchTime.whole((double) left / n);
            cut.add(Math.min(left, size));
            left -= Math.min(left, size);
        }
        return cut;
    }
}
