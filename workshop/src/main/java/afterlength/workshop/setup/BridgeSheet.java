package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.Caveat;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.PlateFlow;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.SheetHead;
import afterlength.workshop.paper.SheetPdf;
import afterlength.workshop.paper.SheetTooSmall;
import afterlength.workshop.paper.SvgPen;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The bridge on paper at 1 : 1: a template to cut out, what it was drawn from, the heights string by string, what to mind while
 * the strings are off, and everything that should be known beside the numbers.
 */
public final class BridgeSheet {
    private static final double GAP_MM = 5;
    private static final String CAUTION =
            "Loosen and change one string at a time: when all tension is gone the post can fall. If it has fallen, set it "
                    + "before a string is tightened again. Keep your eyes out of line with a string under tension. Watch the "
                    + "bridge while tuning and draw it upright before it leans.";

    private final BridgeShape shape;
    private final BridgePaper paper;
    private final SheetHead head;
    private final Optional<SheetBow> bow;

    private BridgeSheet(BridgeShape shape, BridgePaper paper) {
        this.shape = shape;
        this.paper = paper;
        this.head = paper.head(
                "Bridge, " + Figures.mm(shape.centreHeight()) + " on the centre line",
                BridgeEntries.of(shape.inputs()));
        this.bow = SheetBow.find(shape);
    }

    /**
     * Draws the sheet, and as many more as the words need.
     *
     * @throws SheetTooSmall when the bridge is larger than a sheet at 1 : 1
     */
    public static byte[] pdf(BridgeShape shape, BridgePaper paper) {
        BridgeSheet sheet = new BridgeSheet(shape, paper);
        return SheetPdf.of(paper.size(), sheet.head, sheet.plates());
    }

    /** The template alone for a cutter, one user unit to the millimetre, with both check rules and what it was drawn from. */
    public static String svg(BridgeShape shape, BridgePaper paper) {
        BridgeSheet sheet = new BridgeSheet(shape, paper);
        return SvgPen.forPaper(LooseSheet.of(sheet.head, sheet.template()));
    }

    private Drawing template() {
        Drawing template = BridgeDrawing.forPaper(shape, paper.footSpan());
        return bow.map(lying -> BowLines.over(template, shape, lying)).orElse(template);
    }

    private List<Drawing> plates() {
        Drawing template = template();
        PlateFlow flow = new PlateFlow(SheetPdf.room(head), "Bridge template", template.description());
        flow.drawing(template);
        flow.gap(GAP_MM);
        tableAndNotes(flow);
        flow.gap(GAP_MM);
        bow.ifPresent(lying -> bowTable(flow, lying));
        flow.caution("Caution", CAUTION);
        caveats(flow);
        return flow.plates();
    }

    private void bowTable(PlateFlow flow, SheetBow lying) {
        flow.heading("The bow on one string alone");
        BowTable.put(flow.sketch(), flow.reserve(BowTable.height_mm(lying)), lying);
        flow.gap(1.5);
        flow.dashed(lying.words()
                + " Angles rise to the treble. The light broken lines are the limits on the open strings; from the"
                + " force in the last column on, the bow at the octave meets a neighbour.");
        flow.gap(GAP_MM);
    }

    private void tableAndNotes(PlateFlow flow) {
        Point topLeft = flow.reserve(BridgeTable.height_mm(shape));
        BridgeTable.put(flow.sketch(), topLeft, shape);
        double aside_mm = BridgeTable.WIDTH_MM + GAP_MM;
        double notes_mm = flow.column(notes(), topLeft.moved(aside_mm, 0), flow.width_mm() - aside_mm);
        flow.gap(Math.max(0, notes_mm - BridgeTable.height_mm(shape)));
    }

    private void caveats(PlateFlow flow) {
        Set<Caveat> all = new LinkedHashSet<>(shape.caveats());
        bow.ifPresent(lying -> all.addAll(lying.octave().caveats()));
        if (!all.isEmpty()) {
            flow.gap(GAP_MM);
            flow.heading("To look at before cutting");
            all.forEach(caveat -> flow.dashed(BridgeWords.of(caveat)));
        }
    }

    private List<String> notes() {
        return List.of(
                "Fit the feet first. Cut out along the heavy line and the broken sides, and lay belly line and centre line "
                        + "on the bridge.",
                "Heights are to the wood, over the belly under the centre line; the feet stand a little lower on the arch. "
                        + "Usual reading errors leave ± " + Figures.mm(shape.heightPlusMinus())
                        + " open: cut to the upper edge of the band first.",
                "“Board end” is from the board to the underside of the string.");
    }
}
