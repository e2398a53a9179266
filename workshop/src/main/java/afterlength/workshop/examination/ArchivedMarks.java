package afterlength.workshop.examination;

import afterlength.workshop.desk.InstrumentView;
import afterlength.workshop.instrument.Instrument;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The marks of a visit as files of W3C Web Annotations, one for each picture that has any, together with our own drawings they are
 * drawn on. Sizes are those kept with the marks; nothing is measured anew.
 */
public final class ArchivedMarks {
    private final FindingStore findings;
    private final MarkStore marks;
    private final PhotographStore photographs;

    public ArchivedMarks(FindingStore findings, MarkStore marks, PhotographStore photographs) {
        this.findings = findings;
        this.marks = marks;
        this.photographs = photographs;
    }

    /**
     * Files by name.
     *
     * @param house where addresses begin, without a slash at the end
     * @param folder address of the folder in which these files will lie
     * @param addressOf where a photograph will lie
     */
    public Map<String, String> of(
            long visitId, Instrument instrument, String house, String folder, Function<Photograph, String> addressOf) {
        Map<Long, Finding> holding = MarkBook.holdingByEntry(findings, visitId);
        Map<String, String> files = new LinkedHashMap<>();
        marks.listNow(visitId).stream()
                .collect(Collectors.groupingBy(DrawnMark::page, LinkedHashMap::new, Collectors.toList()))
                .forEach((page, drawn) -> {
                    List<MarkEntry> entries = drawn.stream()
                            .map(mark -> new MarkEntry(mark, MarkBook.findingOf(mark, holding), MarkSize.NONE))
                            .toList();
                    add(files, drawn.get(0), entries, instrument, house, folder, addressOf);
                });
        return files;
    }

    private void add(
            Map<String, String> files,
            DrawnMark first,
            List<MarkEntry> entries,
            Instrument instrument,
            String house,
            String folder,
            Function<Photograph, String> addressOf) {
        Long photographId = first.photographId();
        InstrumentView view = first.drawing();
        if (photographId != null) {
            Photograph photograph = photographs.get(photographId);
            MarkAnnotations page =
                    new MarkAnnotations(house, new PhotographGround(photograph), addressOf.apply(photograph));
            files.put("marks-photograph-" + photographId + ".jsonld", page.text(entries));
        } else if (view != null) {
            DrawingGround ground = DrawingGround.of(first.visitId(), instrument, view);
            String drawing = "drawing-" + DrawingGround.word(view) + ".svg";
            files.put(drawing, ground.svg());
            files.put(
                    "marks-drawing-" + DrawingGround.word(view) + ".jsonld",
                    new MarkAnnotations(house, ground, folder + drawing).text(entries));
        }
    }
}
