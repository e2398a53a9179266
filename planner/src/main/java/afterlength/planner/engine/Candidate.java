package afterlength.planner.engine;

/**
 * A plan as the search varies it: who goes first, who does it, and what is held back though it could begin. Once laid out, the keys
 * become the starts, so that laying it out again gives the same plan.
 */
final class Candidate {
    /** In place of a person: whoever can begin first. */
    static final int WHOEVER = -1;

    final int[] key;
    final int[] notBefore;
    final int[] person;
    final int[] start;
    /** Half-days on which the pot stays cold though there is glue to be used. */
    final boolean[] cold;

    long cost = Long.MAX_VALUE;

    Candidate(Network network) {
        key = new int[network.size];
        notBefore = new int[network.size];
        person = new int[network.size];
        start = new int[network.size];
        cold = new boolean[network.glueFrom.length];
        for (int i = 0; i < network.size; i++) {
            person[i] = network.persons[i] == 0 ? 0 : WHOEVER;
        }
    }

    Candidate copy(Network network) {
        Candidate copy = new Candidate(network);
        copy.become(this);
        return copy;
    }

    void become(Candidate other) {
        System.arraycopy(other.key, 0, key, 0, key.length);
        System.arraycopy(other.notBefore, 0, notBefore, 0, key.length);
        System.arraycopy(other.person, 0, person, 0, key.length);
        System.arraycopy(other.start, 0, start, 0, key.length);
        System.arraycopy(other.cold, 0, cold, 0, cold.length);
        cost = other.cost;
    }
}
