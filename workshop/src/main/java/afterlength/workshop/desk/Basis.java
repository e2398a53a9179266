package afterlength.workshop.desk;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a form was filled from, in a few letters that travel with it: when what is stored has changed since, somebody else saved in
 * between, and both are shown instead of one overwriting the other.
 */
public final class Basis {
    /** Name of the hidden field. */
    public static final String FIELD = "basis";

    private static final int LETTERS = 16;

    private Basis() {}

    /** The values a form begins with, and where they come from. */
    public static Map<String, String> with(Map<String, String> start, Map<String, String> stored) {
        Map<String, String> all = new HashMap<>(start);
        all.put(FIELD, of(stored));
        return all;
    }

    /** Notes a problem, with what stands now, when the form was filled from something else; a form without a basis passes. */
    public static void check(Typed typed, Map<String, String> stored) {
        if (typed.sound() && !typed.raw(FIELD).isEmpty() && !typed.raw(FIELD).equals(of(stored))) {
            typed.renew(FIELD, of(stored));
            noteChanged(typed, stored);
        }
    }

    /** Shows what stands now beside what was typed, where a stage says in its own words what happened. */
    public static void show(Typed typed, Typed standing) {
        typed.standsNow(standing.everything());
    }

    static void noteChanged(Typed typed, Map<String, String> stored) {
        typed.standsNow(stored);
        typed.note(
                FIELD,
                "Somebody else changed this while the form was open; nothing was overwritten. What stands now and what"
                        + " you typed are shown below where they differ. Mend your fields, then save again.");
    }

    private static String of(Map<String, String> stored) {
        try {
            byte[] text = new TreeMap<>(stored).toString().getBytes(StandardCharsets.UTF_8);
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text))
                    .substring(0, LETTERS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
