package afterlength.workshop.paper;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Arabic letters change with their neighbours. Each letter is replaced by the form that Unicode keeps for its place, from the blocks
 * of presentation forms (U+FB50 to U+FDFF, U+FE70 to U+FEFF); which form is whose is read from the character names and
 * decompositions of the Java library. A letter without forms joins nobody.
 */
final class ArabicForms {
    private static final int TATWEEL = 0x0640;
    private static final int LAM = 0x0644;

    private enum Place {
        ISOLATED,
        FINAL,
        INITIAL,
        MEDIAL
    }

    /** By letter, or by lam and alef together, and place. */
    private static final Map<String, Integer> FORMS = read();

    private ArabicForms() {}

    static String joined(String text) {
        if (text.codePoints().noneMatch(sign -> FORMS.containsKey(Place.ISOLATED + Character.toString(sign)))) {
            return text;
        }
        int[] signs = text.codePoints().toArray();
        StringBuilder shaped = new StringBuilder();
        for (int n = 0; n < signs.length; n++) {
            boolean before = before(signs, n) >= 0 && joinsOnward(signs[before(signs, n)]);
            Integer pair = signs[n] == LAM && n + 1 < signs.length ? form(pair(signs, n), before, false) : null;
            if (pair != null) {
                shaped.appendCodePoint(pair);
                n++;
                continue;
            }
            int next = after(signs, n);
            boolean after = next >= 0 && joinsOnward(signs[n]) && joinsBack(signs[next]);
            Integer form = form(Character.toString(signs[n]), before && joinsBack(signs[n]), after);
            shaped.appendCodePoint(form == null ? signs[n] : form);
        }
        return shaped.toString();
    }

    /** The letters themselves again. */
    static String parted(String text) {
        StringBuilder letters = new StringBuilder();
        text.codePoints().forEach(sign -> {
            String one = Character.toString(sign);
            boolean form = FORMS.containsValue(sign);
            letters.append(form ? Normalizer.normalize(one, Normalizer.Form.NFKC) : one);
        });
        return letters.toString();
    }

    private static String pair(int[] signs, int n) {
        return Character.toString(signs[n]) + Character.toString(signs[n + 1]);
    }

    private static @Nullable Integer form(String letter, boolean before, boolean after) {
        Place place = before ? (after ? Place.MEDIAL : Place.FINAL) : (after ? Place.INITIAL : Place.ISOLATED);
        return FORMS.get(place + letter);
    }

    private static boolean joinsOnward(int sign) {
        return sign == TATWEEL || FORMS.containsKey(Place.INITIAL + Character.toString(sign));
    }

    private static boolean joinsBack(int sign) {
        return sign == TATWEEL || FORMS.containsKey(Place.FINAL + Character.toString(sign));
    }

    /** The neighbour before, over marks; −1 when there is none. */
    private static int before(int[] signs, int n) {
        int at = n - 1;
        while (at >= 0 && isMark(signs[at])) {
            at--;
        }
        return at;
    }

    private static int after(int[] signs, int n) {
        int at = n + 1;
        while (at < signs.length && isMark(signs[at])) {
            at++;
        }
        return at < signs.length ? at : -1;
    }

    private static boolean isMark(int sign) {
        return Character.getType(sign) == Character.NON_SPACING_MARK;
    }

    private static Map<String, Integer> read() {
        Map<String, Integer> forms = new HashMap<>();
        for (int sign = 0xFB50; sign <= 0xFEFC; sign++) {
            String name = Character.getName(sign);
            String letter = Normalizer.normalize(Character.toString(sign), Normalizer.Form.NFKC);
            boolean one = letter.length() == 1;
            boolean lamAlef =
                    letter.length() == 2 && letter.charAt(0) == LAM && name != null && name.contains("LAM WITH ALEF");
            for (Place place : Place.values()) {
                if (name != null && (one || lamAlef) && name.endsWith(place + " FORM")) {
                    forms.putIfAbsent(place + letter, sign);
                }
            }
        }
        return Map.copyOf(forms);
    }
}
