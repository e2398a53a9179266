package afterlength.workshop.agreement;

import java.util.List;

/**
 * One of the ways open to the owner.
 *
 * @param contained the lines that are done
 * @param added those of them that the way before it does not contain
 * @param left the lines that the next way would add, whose places stay as they are
 * @param goesOn whether ways after that would add more still
 */
record ScopeOffer(
        Scope scope,
        String sentence,
        List<ReckonedLine> contained,
        List<ReckonedLine> added,
        List<ReckonedLine> left,
        boolean goesOn,
        Reckoning sum) {

    /** A suggestion that holds no more than the one before it need not be chosen. */
    boolean differs() {
        return scope == Scope.LEAVE || !added.isEmpty();
    }

    /** Whether hands have anything to do when this way is agreed. */
    boolean hasWorkAhead() {
        return differs() && scope != Scope.LEAVE;
    }

    List<Treatment> lines() {
        return contained.stream().map(ReckonedLine::treatment).toList();
    }

    List<Treatment> done() {
        return added.stream().map(ReckonedLine::treatment).toList();
    }

    /** What is done here and cannot be undone, or only in part. */
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
        return done().stream()
                .flatMap(line -> List.of(line.materials().split(",")).stream())
                .map(String::strip)
                .filter(words -> !words.isEmpty() && !words.equals("none"))
                .distinct()
                .toList();
    }
}
