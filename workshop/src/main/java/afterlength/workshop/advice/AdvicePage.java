package afterlength.workshop.advice;

import afterlength.workshop.agreement.FindingLine;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;

/**
 * What could be done about a finding, and what was decided.
 *
 * @param decisions the latest first
 */
record AdvicePage(
        Frame frame, long visitId, FindingLine finding, Advice advice, List<Decision> decisions, Typed typed) {
    String address() {
        return "/visits/" + visitId + "/advice/" + finding.id();
    }
}
