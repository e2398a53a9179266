package afterlength.workshop.paper;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Names the signs that this program's letters cannot write, so that what stands as � on a paper can still be made out. */
final class LostSigns {
    /** More are counted and not named. */
    private static final int NAMED = 12;

    private LostSigns() {}

    static String words(List<Integer> signs) {
        String named = signs.stream().limit(NAMED).map(LostSigns::named).collect(Collectors.joining("; "));
        String more = signs.size() > NAMED ? "; and " + (signs.size() - NAMED) + " more" : "";
        return "The letters of this program cannot write every sign; where � stands, in this order: " + named + more
                + ".";
    }

    private static String named(int sign) {
        String name = Character.getName(sign);
        return String.format(Locale.ROOT, "U+%04X", sign) + (name == null ? "" : " " + name.toLowerCase(Locale.ROOT));
    }
}
