package afterlength.workshop.work;

import afterlength.craft.units.Money;
import afterlength.workshop.agreement.Tax;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.MoneyText;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.ledger.Settings;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads the shop's settings from what was typed. */
final class SettingsForm {
    private static final int LONGEST_HAND = 60;
    private static final int MOST_HANDS = 20;

    private SettingsForm() {}

    /** The settings as they would be; only to be kept when no problem was noted. */
    static Settings read(Typed typed, Settings before) {
        String name = typed.required("shop_name", "The shop's name", 120);
        String address = typed.text("address", "The address", 400);
        Money perHour = MoneyText.read(typed, "per_hour", "The price per hour");
        return new Settings(
                name,
                address,
                hands(typed, before),
                currency(typed),
                perHour == null ? Money.NOTHING : perHour,
                Tax.read(typed, "tax", "The tax").permille(),
                "LETTER".equals(typed.raw("paper")),
                closesAt(typed, before),
                before.demonstration());
    }

    private static List<String> hands(Typed typed, Settings before) {
        List<String> hands = typed.text("hands", "The list of hands", 1500)
                .lines()
                .map(String::strip)
                .filter(hand -> !hand.isEmpty())
                .distinct()
                .toList();
        if (hands.isEmpty()) {
            typed.note("hands", "No hand is named. Write at least one name, one on a line.");
            return before.hands();
        }
        if (hands.size() > MOST_HANDS || hands.stream().anyMatch(hand -> hand.length() > LONGEST_HAND)) {
            typed.note(
                    "hands",
                    "The list of hands has " + hands.size() + " lines; at most " + MOST_HANDS + " names of at most "
                            + LONGEST_HAND + " characters fit, one on a line.");
        }
        return hands;
    }

    private static String currency(Typed typed) {
        String currency = typed.raw("currency").strip();
        if (!currency.matches("[A-Z]{3}")) {
            typed.note(
                    "currency",
                    "The currency is “" + currency + "”; allowed are three capital letters, such as EUR, CHF or GBP.");
        }
        return currency;
    }

    private static LocalTime closesAt(Typed typed, Settings before) {
        String text = typed.raw("closes_at").strip();
        try {
            return LocalTime.parse(text);
        } catch (DateTimeParseException e) {
            typed.note(
                    "closes_at",
                    "Closing time is “" + text + "”, which is no time. Write hours and minutes, such as 18:00.");
            return before.closesAt();
        }
    }

    static Map<String, String> typedOf(Settings settings) {
        Map<String, String> typed = new HashMap<>();
        typed.put("shop_name", settings.shopName());
        typed.put("address", settings.address());
        typed.put("hands", String.join("\n", settings.hands()));
        typed.put("currency", settings.currency());
        typed.put("per_hour", settings.perHour().equals(Money.NOTHING) ? "" : MoneyText.typed(settings.perHour()));
        typed.put("tax", new Tax(settings.taxPermille()).typed());
        typed.put("paper", settings.letterPaper() ? "LETTER" : "A4");
        typed.put("closes_at", Days.clock(settings.closesAt()));
        return typed;
    }
}
