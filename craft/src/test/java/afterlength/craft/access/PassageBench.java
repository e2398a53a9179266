package afterlength.craft.access;

import afterlength.craft.geometry.InstrumentShape;
import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.SoundHole;
import java.lang.management.ManagementFactory;

/** How long the passage takes on a sound-hole of 369 points and on a round one of 400; started by hand, for times are no tests. */
final class PassageBench {
    private static final int ROUNDS = 30;

    private PassageBench() {}

    public static void main(String[] arguments) {
        time("sound-hole", SoundHole.treble(InstrumentShape.violin()).outline(1));
        time("circle", Figures.circle(4.5, 400));
        time("star", Figures.waves(new java.util.SplittableRandom(7), 400));
    }

    private static void time(String name, Outline hole) {
        SectionQuestion question = new SectionQuestion(hole, new Section(12, 5), 0.3, 2.7);
        double first_ms = cpu_ms(question);
        double last_ms = 0;
        for (int round = 0; round < ROUNDS; round++) {
            last_ms = cpu_ms(question);
        }
        System.out.printf(
                "%s, %d points: first %.0f ms, warm %.0f ms%n",
                name, hole.points().size(), first_ms, last_ms);
    }

    private static double cpu_ms(SectionQuestion question) {
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        SectionPassage.of(question);
        return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) / 1e6;
    }
}
