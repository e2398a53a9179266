package afterlength.workshop.agreement;

import afterlength.workshop.instrument.Visit;
import java.util.List;
import java.util.Optional;

/**
 * When a way could be ready, laid on the bench beside everything else that is promised. The stage that plans implements it and
 * {@code start} wires it; a shop that does not plan answers {@link #NOT_PLANNED}.
 */
public interface ReadyBy {
    /** Nothing is planned; a proposal then says so. */
    ReadyBy NOT_PLANNED = (visit, ways) ->
            ways.stream().map(lines -> Optional.<ReadySpan>empty()).toList();

    /**
     * Asked for all ways of a proposal while its page is made, so it has to answer at once: from a rough or kept plan, or empty.
     *
     * @param ways of each what would be done, in the order of the proposal; {@link TreatmentTemplates#listStepsAhead} tells the steps
     *     of each line. What is agreed for this visit already is not in the way: it would be replaced
     * @return one answer for each way, empty when it cannot be said
     */
    List<Optional<ReadySpan>> of(Visit visit, List<List<Treatment>> ways);
}
