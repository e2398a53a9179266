package afterlength.workshop.agreement;

import java.util.Locale;

/**
 * A kind of finding that a treatment answers, in the words of the vocabulary of findings. Finders shorten: "crack" also meets
 * "wing crack", and "open seam, upper bout" also meets "open seam"; so one of the two has to be contained in the other.
 */
public record Fit(String part, String kind) {
    /** Reads {@code part/kind}. */
    public static Fit of(String text) {
        int slash = text.indexOf('/');
        return new Fit(bare(text.substring(0, slash)), bare(text.substring(slash + 1)));
    }

    public boolean meets(FindingLine finding) {
        String found = bare(finding.kind());
        boolean samePart = part.equals("whole") || part.equals(bare(finding.part()));
        return samePart && !found.isEmpty() && (kind.contains(found) || found.contains(kind));
    }

    /** Lower case, without a part in brackets at the end. */
    private static String bare(String words) {
        return words.toLowerCase(Locale.ROOT).replaceAll("\\s*\\([^)]*\\)$", "").strip();
    }
}
