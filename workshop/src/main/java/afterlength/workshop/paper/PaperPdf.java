package afterlength.workshop.paper;

import com.openhtmltopdf.extend.FSCacheEx;
import com.openhtmltopdf.extend.FSCacheValue;
import com.openhtmltopdf.extend.impl.FSDefaultCacheStore;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.TextDirection;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.CacheStore;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Turns a text paper into pages: tagged, with its fonts in it, written to the rules of PDF/A-2a and PDF/UA as far as the
 * library keeps them (no validator has judged the result). Nothing is read from disk or network; scripts in drawings do not
 * run. The first paper of a running program takes some seconds, because fonts and library have to be read; {@link #warmUp}
 * does that ahead of time.
 */
public final class PaperPdf {
    private static final FSCacheEx<String, FSCacheValue> FONT_METRICS = new FSDefaultCacheStore();
    private static final byte[] SRGB =
            ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();

    static {
        LibraryLog.quieten();
    }

    private PaperPdf() {}

    public static byte[] of(PaperDocument paper) {
        PdfRendererBuilder builder = builder(paper);
        try (BatikSVGDrawer drawings = new BatikSVGDrawer()) {
            addFonts(builder.useSVGDrawer(drawings), paper);
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                return bytes(renderer.createPDFKeepOpen());
            }
        } catch (IOException broken) {
            throw new UncheckedIOException("the paper '" + paper.title() + "' could not be made", broken);
        }
    }

    /** Makes a paper nobody sees, so that the first real one does not keep its reader waiting. */
    public static void warmUp() {
        String body = "<p>a<i>b</i><b>c</b> ♭</p>" + SvgPen.forPaper(CheckRules.at(new Point(0, 0)));
        RunningWords running = RunningWords.english("", "");
        of(new PaperDocument("warm", "en", PaperSize.A4, running, body, Map.of()));
    }

    private static PdfRendererBuilder builder(PaperDocument paper) {
        GivenPictures pictures = new GivenPictures(paper.images());
        return new PdfRendererBuilder()
                .withW3cDocument(PaperPage.of(paper), GivenPictures.PROTOCOL + ":")
                .useUriResolver(pictures)
                .useProtocolsStreamImplementation(pictures, GivenPictures.PROTOCOL)
                .useExternalResourceAccessControl(
                        (uri, kind) -> uri.startsWith(GivenPictures.PROTOCOL + ":"),
                        ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI)
                .useCacheStore(CacheStore.PDF_FONT_METRICS, FONT_METRICS)
                .useUnicodeBidiSplitter(DirectionRuns::new)
                .useUnicodeBidiReorderer(new RightToLeft())
                .defaultTextDirection(TextDirection.LTR)
                .useReplacementText(Character.toString(Lettering.LOST))
                .usePdfAConformance(PdfAConformance.PDFA_2_A)
                .usePdfUaAccessibility(true)
                .useColorProfile(SRGB)
                .withProducer("Afterlength");
    }

    private static void addFonts(PdfRendererBuilder builder, PaperDocument paper) {
        for (Face face : Face.values()) {
            if (face == Face.FAR_EASTERN) {
                continue;
            }
            addFont(builder, face, face.weight(), EnumSet.of(FSFontUseCase.DOCUMENT));
            // Within SVG the library finds 400 and 700 but nothing between, see SvgPen.
            int svgWeight = face.weight() > 400 ? 700 : 400;
            addFont(builder, face, svgWeight, EnumSet.of(FSFontUseCase.SVG));
        }
        addFont(builder, Face.SYMBOLS, Face.SYMBOLS.weight(), EnumSet.of(FSFontUseCase.FALLBACK_PRE));
        if (Lettering.needsFarEastern(paper.everyWord())) {
            addFont(
                    builder,
                    Face.FAR_EASTERN,
                    Face.FAR_EASTERN.weight(),
                    EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG, FSFontUseCase.FALLBACK_PRE));
        }
    }

    private static void addFont(PdfRendererBuilder builder, Face face, int weight, Set<FSFontUseCase> uses) {
        FontStyle style = face.italic() ? FontStyle.ITALIC : FontStyle.NORMAL;
        builder.useFont(
                () -> new ByteArrayInputStream(FontFiles.bytes(face)), face.family(), weight, style, true, uses);
    }

    private static byte[] bytes(PDDocument document) throws IOException {
        PdfTitle.printUnscaled(document);
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        document.save(pdf);
        return pdf.toByteArray();
    }
}
