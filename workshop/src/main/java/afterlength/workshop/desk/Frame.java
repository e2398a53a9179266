package afterlength.workshop.desk;

import org.jspecify.annotations.Nullable;

/**
 * What stands around a page.
 *
 * @param sign the shop's name over the door
 * @param place which of the three places the page belongs to
 * @param title the page's own title
 * @param backTo address of the page one step out, or null
 * @param backWords what that page is called
 */
public record Frame(
        ShopSign sign, Place place, String title, @Nullable String backTo, String backWords) {
    /** The three places. */
    public enum Place {
        TODAY,
        INSTRUMENT,
        SHELF
    }

    public Frame back(String address, String words) {
        return new Frame(sign, place, title, address, words);
    }
}
