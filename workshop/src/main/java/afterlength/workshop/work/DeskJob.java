package afterlength.workshop.work;

/** What a visit waits for when it asks nothing of the bench: the job of another stage. */
enum DeskJob {
    HAND_OVER("Hand over", "all agreed steps are done"),
    EXAMINE("Examine", "nothing has been looked at yet"),
    PROPOSE("Propose what could be done", "it was looked at; nothing is proposed yet"),
    ANSWER("Ask for the owner's answer", "the proposal is not agreed yet"),
    PLAN_STEPS("List the steps", "it is agreed, and no step is listed");

    private final String doing;
    private final String because;

    DeskJob(String doing, String because) {
        this.doing = doing;
        this.because = because;
    }

    String doing() {
        return doing;
    }

    String because() {
        return because;
    }

    /** For a visit without any step. */
    static DeskJob of(HouseVisit visit) {
        if (visit.agreements() > 0) {
            return PLAN_STEPS;
        }
        if (visit.treatments() > 0) {
            return ANSWER;
        }
        return visit.looked() > 0 ? PROPOSE : EXAMINE;
    }
}
