package afterlength.workshop.examination;

import afterlength.sight.camera.Pixel;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads a mark from what was drawn and typed. */
final class MarkForm {
    static final List<Choice> TOOLS = Arrays.stream(MarkTool.values())
            .map(tool -> new Choice(tool.name(), tool.words()))
            .toList();
    static final List<Choice> ARCHES = Arrays.stream(ArchHeight.values())
            .map(arch -> new Choice(arch.name(), arch.words()))
            .toList();

    /** From below the edge of a cello to above its bridge, with the card at the edge. */
    private static final double LOWEST_MM = -150;

    private static final double HIGHEST_MM = 150;

    private final Typed typed;
    private final MarkGround ground;

    private MarkForm(Typed typed, MarkGround ground) {
        this.typed = typed;
        this.ground = ground;
    }

    /** A new mark, or one that replaces another; to be used only when nothing was noted. */
    static DrawnMark read(
            Typed typed, MarkGround ground, List<Finding> findings, @Nullable Long replaces, Instant now) {
        return new MarkForm(typed, ground).read(findings, replaces, now);
    }

    private DrawnMark read(List<Finding> findings, @Nullable Long replaces, Instant now) {
        MarkTool tool = tool();
        List<Pixel> points = MarkPoints.read(typed, ground, tool);
        Photograph photograph = ground.photograph();
        return new DrawnMark(
                0,
                ground.visitId(),
                replaces,
                false,
                photograph == null ? null : Long.valueOf(photograph.id()),
                ground.view(),
                finding(findings),
                tool,
                points.isEmpty() ? "" : SvgSelector.of(tool, points),
                arch(),
                height_mm(),
                null,
                null,
                null,
                null,
                typed.text("remark", "The remark", 500),
                typed.required("hand", "The hand", 60),
                now);
    }

    private MarkTool tool() {
        MarkTool tool = typed.choice("tool", "What is marked", MarkTool.class);
        return tool == null ? MarkTool.POINT : tool;
    }

    /** On a drawing nothing is asked about height. */
    private ArchHeight arch() {
        ArchHeight arch = ground.isPhotograph()
                ? typed.choice("arch", "The height of the mark", ArchHeight.class)
                : ArchHeight.UNKNOWN;
        return arch == null ? ArchHeight.UNKNOWN : arch;
    }

    private @Nullable Double height_mm() {
        return ground.isPhotograph()
                ? typed.decimal("height_mm", "The height over the card", "mm", LOWEST_MM, HIGHEST_MM)
                : null;
    }

    private @Nullable Long finding(List<Finding> findings) {
        String chosen = typed.raw("finding");
        if (chosen.isBlank()) {
            return null;
        }
        return findings.stream()
                .map(Finding::id)
                .filter(id -> Long.toString(id).equals(chosen))
                .findFirst()
                .orElseGet(() -> {
                    typed.note("finding", "This finding was corrected or withdrawn meanwhile. Choose it again.");
                    return null;
                });
    }

    /** Before anything is drawn; tool, height and hand of the mark before are kept. */
    static Typed fresh(@Nullable String tool, @Nullable String arch, @Nullable String finding, String hand) {
        return Typed.known(Map.of(
                "tool", tool == null ? MarkTool.CRACK.name() : tool,
                "arch", arch == null ? ArchHeight.UNKNOWN.name() : arch,
                "finding", finding == null ? "" : finding,
                "hand", hand));
    }

    /**
     * A mark to be corrected.
     *
     * @param findingNow the id of the wording that holds of the finding it belongs to, empty without one
     */
    static Typed known(DrawnMark mark, String findingNow) {
        Map<String, String> values = new HashMap<>();
        values.put("tool", mark.tool().name());
        values.put("arch", mark.arch().name());
        values.put("height_mm", Figures.typed(mark.heightMm()));
        values.put("finding", findingNow);
        values.put("points", MarkPoints.text(mark.points()));
        values.put("remark", mark.remark());
        values.put("hand", mark.hand());
        values.put("replaces", Long.toString(mark.id()));
        return Typed.known(values);
    }
}
