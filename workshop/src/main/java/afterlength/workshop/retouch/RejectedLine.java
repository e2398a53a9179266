package afterlength.workshop.retouch;

/**
 * A line (or a column) of an instrument's file that was not taken.
 *
 * @param where "line 7" or "column 3"
 * @param text as it stands in the file, cut when long
 */
record RejectedLine(String where, String text, String reason) {
    private static final int LONGEST = 60;

    static RejectedLine of(FileLine line, String reason) {
        return new RejectedLine("line " + line.number(), shortened(line.text()), reason);
    }

    static RejectedLine column(int number, String name, String reason) {
        return new RejectedLine("column " + number, shortened(name), reason);
    }

    private static String shortened(String text) {
        return text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text;
    }
}
