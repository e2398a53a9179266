package afterlength.workshop.ledger;

/**
 * A person's words as a cell of a CSV that may be opened in a spreadsheet: what it would carry out as a formula gets an apostrophe in
 * front, which a spreadsheet does not show. The way back takes it off again, so that nothing is changed by going out and coming in.
 */
public final class CsvCell {
    private static final String ACTS = "=+-@\t\r'";

    private CsvCell() {}

    /** For words; a number is written as a number and not passed through here. */
    public static String guarded(String words) {
        return !words.isEmpty() && ACTS.indexOf(words.charAt(0)) >= 0 ? "'" + words : words;
    }

    public static String plain(String cell) {
        return cell.startsWith("'") ? cell.substring(1) : cell;
    }
}
