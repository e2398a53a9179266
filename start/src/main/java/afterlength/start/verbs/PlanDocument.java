package afterlength.start.verbs;

import afterlength.planner.bench.Placed;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Workshop;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.DocumentValue;
import java.util.ArrayList;
import java.util.List;

/** A plan as the verb writes it; what else its answer holds may stand there. */
final class PlanDocument {
    private PlanDocument() {}

    static Plan read(DocumentReader document, Workshop workshop) {
        document.hasAny("cost", "late", "problems");
        int steps = workshop.steps().size();
        int persons = workshop.personHours().size();
        List<Placed> placed = new ArrayList<>();
        for (DocumentValue row : document.get("plan").asList(steps, steps)) {
            List<DocumentValue> pair = row.asList(2, 2);
            if (pair.size() == 2) {
                placed.add(new Placed(
                        pair.get(0).asWhole(-WorkshopDocument.LATEST, WorkshopDocument.LATEST, "min"),
                        pair.get(1).asWhole(0, persons - 1, "")));
            }
        }
        return new Plan(placed);
    }
}
