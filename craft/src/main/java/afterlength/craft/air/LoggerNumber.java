package afterlength.craft.air;

/** A number as loggers write it: one decimal sign, an optional unit behind, no thousands. NaN where it is none. */
final class LoggerNumber {
    private static final int LONGEST = 24;

    private LoggerNumber() {}

    static double read(String text, char decimalSign) {
        int end = text.length();
        while (end > 0 && isUnit(text.charAt(end - 1))) {
            end--;
        }
        if (end == 0 || end > LONGEST) {
            return Double.NaN;
        }
        StringBuilder plain = new StringBuilder(end);
        int signs = 0;
        for (int n = 0; n < end; n++) {
            char letter = text.charAt(n);
            if (letter == decimalSign) {
                plain.append('.');
                signs++;
            } else if ((letter >= '0' && letter <= '9') || (n == 0 && (letter == '-' || letter == '+'))) {
                plain.append(letter);
            } else if (n == 0 && letter == '−') {
                plain.append('-');
            } else {
                return Double.NaN;
            }
        }
        return signs > 1 || !endsInDigit(plain) ? Double.NaN : Double.parseDouble(plain.toString());
    }

    private static boolean endsInDigit(StringBuilder plain) {
        return Character.isDigit(plain.charAt(plain.length() - 1));
    }

    private static boolean isUnit(char letter) {
        return letter == '°' || letter == 'C' || letter == 'F' || letter == '%' || letter == ' ' || letter == '\u00a0';
    }
}
