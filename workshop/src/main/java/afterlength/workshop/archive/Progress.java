package afterlength.workshop.archive;

/** Is told how far a long work has come; may throw to stop it. */
@FunctionalInterface
public interface Progress {
    /** Tells nobody. */
    Progress NOBODY = (what, done, all) -> {};

    /** Takes note of how far it has come; what is done is told in a few words: “Tables read”. */
    void told(String what, long done, long all);
}
