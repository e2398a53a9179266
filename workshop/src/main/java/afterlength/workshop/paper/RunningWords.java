package afterlength.workshop.paper;

/**
 * What stands at the foot of every page of a text paper: {@code instrument · date} and {@code page n of m}.
 *
 * @param page the word before the number of the page
 * @param of the word before the number of pages
 */
public record RunningWords(String instrument, String date, String page, String of) {
    public static RunningWords english(String instrument, String date) {
        return new RunningWords(instrument, date, "page", "of");
    }
}
