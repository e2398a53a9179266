package afterlength.start;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.setup.SetupMoment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** All papers of one visit, under the names they are filed by. */
final class Papers {
    private final Map<String, byte[]> byName;

    private Papers(Map<String, byte[]> byName) {
        this.byName = byName;
    }

    static Papers of(House house, Visit visit) {
        Map<String, byte[]> papers = new LinkedHashMap<>();
        papers.put("receipt.pdf", house.custodyReceipts.pdf(visit, house.settings.get()));
        papers.put("condition-report.pdf", house.conditionReports.pdf(visit, house.settings.get()));
        papers.put("proposal.pdf", house.proposals.pdf(visit.id(), LocalDate.now(house.clock)));
        papers.put("bridge-sheet.pdf", house.bridgeSheets.get(visit, SetupMoment.AFTER));
        papers.put("crown-templates.pdf", house.bridgeSheets.crown(visit, SetupMoment.AFTER));
        papers.put("setup-card.pdf", house.bridgeSheets.card(visit, SetupMoment.AFTER));
        papers.put("final-report.pdf", house.finalReports.pdf(visit));
        papers.put("care-advice.pdf", house.careSheets.pdf(visit));
        house.invoices.listOf(visit.id()).stream()
                .findFirst()
                .ifPresent(invoice -> papers.put("invoice.pdf", house.invoicePapers.pdf(invoice)));
        return new Papers(papers);
    }

    /** Those papers of a visit that can be set by now; a bridge that was not drawn has no sheet. */
    static Map<String, byte[]> possible(House house, Visit visit) {
        Map<String, byte[]> papers = new LinkedHashMap<>();
        add(papers, "condition-report.pdf", () -> house.conditionReports.pdf(visit, house.settings.get()));
        add(papers, "proposal.pdf", () -> house.proposals.pdf(visit.id(), LocalDate.now(house.clock)));
        add(papers, "bridge-sheet.pdf", () -> house.bridgeSheets.get(visit, SetupMoment.AFTER));
        add(papers, "crown-templates.pdf", () -> house.bridgeSheets.crown(visit, SetupMoment.AFTER));
        add(papers, "setup-card.pdf", () -> house.bridgeSheets.card(visit, SetupMoment.AFTER));
        add(papers, "final-report.pdf", () -> house.finalReports.pdf(visit));
        return papers;
    }

    private static void add(Map<String, byte[]> papers, String name, Supplier<byte[]> paper) {
        try {
            papers.put(name, paper.get());
        } catch (NotHere none) {
            // There is nothing to set such a paper from.
        }
    }

    List<Path> writeTo(Path folder) throws IOException {
        Files.createDirectories(folder);
        List<Path> written = new ArrayList<>();
        for (Map.Entry<String, byte[]> paper : byName.entrySet()) {
            written.add(Files.write(folder.resolve(paper.getKey()), paper.getValue()));
        }
        return written;
    }
}
