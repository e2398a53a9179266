package afterlength.workshop.ledger;

import afterlength.craft.units.Money;
import java.time.LocalTime;
import java.util.List;

/**
 * The shop's own settings.
 *
 * @param hands the people who work here, the usual one first
 * @param currency three letters, ISO 4217
 * @param perHour price of an hour's work, before tax
 * @param taxPermille value added tax in tenths of a per cent, so that 5.5 % is 55
 * @param letterPaper whether papers are US Letter rather than A4
 * @param closesAt when hands go home; Today says what still fits before
 * @param demonstration whether everything in this shop is invented
 */
public record Settings(
        String shopName,
        String address,
        List<String> hands,
        String currency,
        Money perHour,
        int taxPermille,
        boolean letterPaper,
        LocalTime closesAt,
        boolean demonstration) {

    /** A shop that has not been told anything yet. The rate of nothing is a reminder to set one, not a proposal. */
    public static final Settings FRESH = new Settings(
            "Our workshop", "", List.of("bench"), "EUR", Money.NOTHING, 0, false, LocalTime.of(18, 0), false);

    public String usualHand() {
        return hands.get(0);
    }
}
