package afterlength.workshop.agreement;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.MoneyText;
import afterlength.workshop.ledger.Settings;
import org.jspecify.annotations.Nullable;

/**
 * How prices and hours are written for the owner, on page and paper alike, and the rules they were made by.
 *
 * @param currency three letters
 */
record PriceWords(String currency, Money perHour, Tax tax) {
    private static final String WHOLE = ".00";
    private static final long QUARTER_min = 15;
    private static final long HOUR_min = 60;

    /** From here on whole hours are enough. */
    private static final long LONG_WORK_min = 8 * HOUR_min;

    static PriceWords of(Settings settings) {
        return new PriceWords(settings.currency(), settings.perHour(), new Tax(settings.taxPermille()));
    }

    boolean rateIsMissing() {
        return perHour.equals(Money.NOTHING);
    }

    String exact(Money amount) {
        return MoneyText.words(amount, currency);
    }

    /** "EUR 480 – 720": the ends stand on full steps, so cents are left off. */
    String range(PriceSpan price) {
        String low = whole(price.low());
        String high = whole(price.high());
        return low.equals(high) ? low : low + "\u00a0–\u00a0" + high.substring(currency.length() + 1);
    }

    String ceiling(@Nullable Money amount) {
        return amount == null ? "" : whole(amount);
    }

    private String whole(Money amount) {
        String words = exact(amount);
        return words.endsWith(WHOLE) ? words.substring(0, words.length() - WHOLE.length()) : words;
    }

    /** "12 – 19 h", "45 min – 1 h 30": rounded outward to whole hours, quarters or five minutes, whichever suits. */
    static String hours(WorkSpan work) {
        long step_min = work.high_min() >= LONG_WORK_min ? HOUR_min : work.high_min() >= HOUR_min ? QUARTER_min : 5;
        long low_min = Math.floorDiv(work.low_min(), step_min) * step_min;
        long high_min = Math.floorDiv(work.high_min() + step_min - 1, step_min) * step_min;
        return step_min == HOUR_min
                ? Figures.range(Long.toString(low_min / HOUR_min), high_min / HOUR_min + " h")
                : Figures.range(Figures.duration(low_min), Figures.duration(high_min));
    }

    /** Between which days a way would be ready, or that nobody planned it yet. */
    static String ready(@Nullable ReadySpan ready) {
        if (ready == null) {
            return "not planned yet";
        }
        String latest = Days.words(ready.latest());
        return ready.earliest().equals(ready.latest()) ? latest : Figures.range(Days.words(ready.earliest()), latest);
    }

    String hoursRule() {
        return "Hours are work of hands only; waiting for glue and varnish comes on top. Each step has a least, a usual and a most"
                + " time; 10,000 runs of the whole job are drawn from them, quick and slow instruments among them, and the range"
                + " holds eight runs in ten. It is as good as those times are. What is found only after opening is not in it.";
    }

    String moneyRule() {
        return hourly()
                + " A line’s expected price is its expected minutes at that rate, rounded half up to 0.01, with its"
                + " materials; these prices add up exactly. " + taxRule()
                + " Ends of ranges are rounded outward to full fives. The ranges of lines do not add up to the range of the"
                + " whole: it is unlikely that every line goes slowly.";
    }

    private String hourly() {
        return rateIsMissing()
                ? "The price of an hour is not set."
                : "An hour costs " + exact(perHour) + " before tax.";
    }

    private String taxRule() {
        return tax.permille() == 0
                ? "No tax is added."
                : tax.rate() + " tax is reckoned once, on the sum, rounded half up to 0.01.";
    }
}
