package afterlength.craft.setup;

import afterlength.craft.units.Frequency;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A note in equal temperament, counted from the a above middle C, which is A4. Read from names such as G3, C#4, B♭2 or Eb4:
 * letter, up to two sharps or two flats, octave (which changes at C).
 */
public record Pitch(int semitonesFromA4) {
    private static final Pattern NAME = Pattern.compile("([A-Ga-g])([#♯]{0,2}|[b♭]{0,2})(-?\\d)");
    private static final String LETTERS = "C D EF G A B";
    private static final int A4 = 4 * 12 + LETTERS.indexOf('A');

    public static Optional<Pitch> find(String name) {
        Matcher matcher = NAME.matcher(name.strip());
        return matcher.matches() ? Optional.of(read(matcher)) : Optional.empty();
    }

    private static Pitch read(Matcher matcher) {
        int letter = LETTERS.indexOf(Character.toUpperCase(matcher.group(1).charAt(0)));
        int octave = Integer.parseInt(matcher.group(3));
        return new Pitch(octave * 12 + letter + accidental(matcher.group(2)) - A4);
    }

    private static int accidental(String signs) {
        boolean sharp = signs.startsWith("#") || signs.startsWith("♯");
        return sharp ? signs.length() : -signs.length();
    }

    public Frequency frequency(double a4_Hz) {
        return Frequency.ofHertz(a4_Hz * Math.pow(2, semitonesFromA4 / 12.0));
    }
}
