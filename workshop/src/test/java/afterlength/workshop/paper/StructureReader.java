package afterlength.workshop.paper;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;

/** Reads from a tagged file what a screen reader would say instead of its pictures. */
final class StructureReader {
    private StructureReader() {}

    static List<String> alternatives(PDDocument document) {
        List<String> alternatives = new ArrayList<>();
        collect(document.getDocumentCatalog().getStructureTreeRoot(), alternatives);
        return alternatives;
    }

    private static void collect(PDStructureNode node, List<String> alternatives) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                if (element.getAlternateDescription() != null) {
                    alternatives.add(element.getAlternateDescription());
                }
                collect(element, alternatives);
            }
        }
    }
}
