package afterlength.craft.air;

/**
 * Rows one after another that are not counted, for one reason.
 *
 * @param firstText the first of them as it stands, shortened, or empty where it was not kept
 */
public record RejectedRows(int firstLine, int lastLine, RowFault fault, String firstText) {
    static final int LONGEST_TEXT = 80;

    /** "Line 12 has no readable temperature: …". */
    public String text() {
        String lines = firstLine == lastLine
                ? "Line " + firstLine
                : "Lines " + firstLine + " to " + lastLine + ", each of them,";
        return lines + " " + fault.words() + (firstText.isEmpty() ? "." : ": " + firstText);
    }

    public int count() {
        return lastLine - firstLine + 1;
    }
}
