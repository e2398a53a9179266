package afterlength.workshop.paper;

import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** What a PDF says of itself: title, language, maker; and that it is to be printed at the size it has. */
final class PdfTitle {
    private PdfTitle() {}

    static void set(PDDocument document, String title, String language, String maker) {
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(title);
        information.setCreator(maker);
        information.setProducer(maker);
        document.getDocumentCatalog().setLanguage(language);
        printUnscaled(document);
    }

    /** Asks the viewer's print window for "no scaling"; not every viewer listens. */
    static void printUnscaled(PDDocument document) {
        PDViewerPreferences preferences = document.getDocumentCatalog().getViewerPreferences();
        if (preferences == null) {
            preferences = new PDViewerPreferences(new COSDictionary());
        }
        preferences.setDisplayDocTitle(true);
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        document.getDocumentCatalog().setViewerPreferences(preferences);
    }
}
