package afterlength.workshop.agreement;

import java.util.List;

/** An agreement with the lines as they were offered then. */
record Agreed(Agreement agreement, List<AgreementLine> lines) {
    List<AgreementLine> accepted() {
        return lines.stream().filter(AgreementLine::accepted).toList();
    }

    List<AgreementLine> declined() {
        return lines.stream().filter(line -> !line.accepted()).toList();
    }
}
