package afterlength.workshop.retouch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DropsPropertyTest {
    @Test
    void aThirdAndTwoThirdsAreThreeDrops() {
        assertThat(Drops.of(List.of(1 / 3.0, 2 / 3.0))).containsExactly(1, 2);
        assertThat(Drops.of(List.of(1.0))).containsExactly(1);
    }

    @Test
    void sharesAboveATenthComeOutWithinFivePerCent() {
        SplittableRandom random = new SplittableRandom(42);
        for (int trial = 0; trial < 2000; trial++) {
            double first = 0.1 + 0.8 * random.nextDouble();
            List<Integer> drops = Drops.of(List.of(first, 1 - first));
            double all = drops.get(0) + drops.get(1);
            assertThat(all).as("share %s", first).isLessThanOrEqualTo(Drops.MOST);
            assertThat(drops.get(0) / all / first).as("share %s", first).isBetween(0.95 - 1e-9, 1.05 + 1e-9);
        }
    }
}
