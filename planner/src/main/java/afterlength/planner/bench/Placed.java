package afterlength.planner.bench;

/** When a step begins and who does it. */
public record Placed(int start, int person) {
    /** In a plan to go on from: a step that is new since. It comes after what was planned, whoever does it, and no day of it was promised. */
    public static final Placed NOWHERE = new Placed(Integer.MAX_VALUE / 2, -1);
}
