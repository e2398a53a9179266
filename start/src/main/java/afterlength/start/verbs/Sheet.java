package afterlength.start.verbs;

import afterlength.workshop.paper.PaperSize;
import java.time.LocalDate;

/** What a verb can put on paper beside its answer, at 1 : 1. */
public interface Sheet {
    /**
     * The sheet on paper.
     *
     * @param drawnBy the program and its version
     * @throws afterlength.workshop.paper.SheetTooSmall when it is larger than the paper
     */
    byte[] pdf(PaperSize size, LocalDate day, String drawnBy);

    /** The same for a cutter, as large as it needs to be; one user unit to the millimetre. */
    String svg(LocalDate day, String drawnBy);
}
