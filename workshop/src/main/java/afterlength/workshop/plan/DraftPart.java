package afterlength.workshop.plan;

import org.jspecify.annotations.Nullable;

/**
 * One of the two plans to choose from.
 *
 * @param which its name in the address: {@code better} or {@code moved}
 * @param change what it changes; null while it is looked for, and when there is none
 * @param instead what is said where there is none
 */
record DraftPart(
        String draftId,
        String which,
        String title,
        boolean working,
        @Nullable PlanChange change,
        String instead) {
    static DraftPart moved(Draft draft) {
        PlanChange change = draft.findMoved()
                .map(plan -> PlanChange.of(plan, draft.kept(), draft.work().calendar()))
                .orElse(null);
        return new DraftPart(draft.id(), "moved", "The old order, moved along", false, change, instead(draft.moved()));
    }

    static DraftPart better(Draft draft) {
        PlanChange change = draft.findBetter()
                .map(plan -> PlanChange.of(plan, draft.kept(), draft.work().calendar()))
                .orElse(null);
        String instead = draft.stopped()
                ? "The search was stopped; the plan below stands."
                : "No better plan was found in the time given. That does not say that there is none.";
        return new DraftPart(draft.id(), "better", "A better plan", draft.working(), change, instead);
    }

    private static String instead(PlanAnswer answer) {
        if (answer instanceof PlanAnswer.Broken broken) {
            return "The plan that was made breaks a rule of the bench and is not shown. " + broken.words();
        }
        return "The hours ahead do not hold this work in the old order. Give the shop more hours, or shorten an absence.";
    }

    boolean first() {
        return which.equals("better");
    }
}
