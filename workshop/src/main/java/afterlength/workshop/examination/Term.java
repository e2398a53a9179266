package afterlength.workshop.examination;

/**
 * A term of the vocabulary of findings.
 *
 * @param part "top", "ribs", "varnish"
 * @param type the broad kind: "crack", "wear", "old repair"
 * @param words the neutral term that is offered: "wing crack"
 * @param aatId number of the nearest broad concept in the Art & Architecture Thesaurus, empty when none was found
 * @param usualTreatments what is usually done, in short; the restorer decides
 * @param blocksPlay whether it usually keeps an instrument from being played
 * @param mark where the row comes from: read in a named source, or common practice
 */
public record Term(
        String part,
        String type,
        String words,
        String definition,
        String aatId,
        String usualTreatments,
        boolean blocksPlay,
        String mark) {}
