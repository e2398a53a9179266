package afterlength.workshop.agreement;

import java.util.List;

/**
 * One of the ways open to the owner.
 *
 * @param contained the lines that are done
 * @param left the lines that are not done, whose places stay as they are
 * @param adds whether it goes further than the suggestion before it
 */
record ScopeOffer(
        Scope scope,
        String sentence,
        List<ReckonedLine> contained,
        List<ReckonedLine> left,
        Reckoning sum,
        boolean adds) {

    List<Treatment> done() {
        return contained.stream().map(ReckonedLine::treatment).toList();
    }

    /** What is done and cannot be undone, or only in part. */
    List<Treatment> notFullyUndone() {
        return done().stream().filter(line -> line.undoing() != Undoing.YES).toList();
    }

    /** What is left on the instrument; work around the job is not. */
    List<Treatment> leftOnInstrument() {
        return left.stream()
                .map(ReckonedLine::treatment)
                .filter(Treatment::treatsTheInstrument)
                .toList();
    }

    List<String> materials() {
        return contained.stream()
                .map(line -> line.treatment().materials())
                .flatMap(words -> List.of(words.split(",")).stream())
                .map(String::strip)
                .filter(words -> !words.isEmpty() && !words.equals("none"))
                .distinct()
                .toList();
    }
}
