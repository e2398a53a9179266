package afterlength.workshop.work;

/** What a visit waits for when it asks nothing of the bench: the job of another stage. */
enum DeskJob {
    HAND_OVER("Hand over", "all agreed steps are done", ""),
    EXAMINE("Examine", "no finding and no measure is written down yet", "examination"),
    PROPOSE("Propose what could be done", "it was looked at; nothing is proposed yet", "agreement"),
    ANSWER("Ask for the owner's answer", "the proposal is not agreed yet", "agreement"),
    PLAN_STEPS("List the steps", "it is agreed, and no step is listed", "work");

    private final String doing;
    private final String because;
    private final String page;

    DeskJob(String doing, String because, String page) {
        this.doing = doing;
        this.because = because;
        this.page = page;
    }

    String doing() {
        return doing;
    }

    String because() {
        return because;
    }

    /** Where it is done; what a later stage does is reached through the instrument's story. */
    String address(HouseVisit visit) {
        return page.isEmpty() ? visit.address() : "/visits/" + visit.visitId() + "/" + page;
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
