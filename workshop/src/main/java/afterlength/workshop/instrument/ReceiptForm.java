package afterlength.workshop.instrument;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.MoneyText;
import afterlength.workshop.desk.Typed;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads the receipt of a visit from what was typed. */
final class ReceiptForm {
    private ReceiptForm() {}

    static Visit read(Typed typed, long id, long instrumentId, String number, LocalDate today, int version) {
        LocalDate received = typed.date("received_on", "The day of receipt");
        LocalDate promised = typed.date("promised_on", "The promised day");
        LocalDate receivedOn = received == null ? today : received;
        if (promised != null && promised.isBefore(receivedOn)) {
            typed.note(
                    "promised_on",
                    "The promised day " + promised + " lies before the receipt on " + receivedOn
                            + "; choose that day or a later one, or leave it empty.");
        }
        return new Visit(
                id,
                instrumentId,
                number,
                receivedOn,
                typed.text("brought_by", "Who brought it", 120),
                typed.required("reason", "Why it comes", 1000),
                typed.text("wish", "What the owner wishes", 2000),
                typed.text("accessories", "What came with it", 1000),
                typed.text("condition_words", "The first look", 2000),
                insuredValue(typed),
                promised,
                version);
    }

    private static @Nullable Money insuredValue(Typed typed) {
        return MoneyText.read(typed, "insured_value", "The insured value");
    }

    static Map<String, String> typedOf(Visit visit) {
        Map<String, String> typed = new HashMap<>();
        typed.put("received_on", visit.receivedOn().toString());
        typed.put("brought_by", visit.broughtBy());
        typed.put("reason", visit.reason());
        typed.put("wish", visit.wish());
        typed.put("accessories", visit.accessories());
        typed.put("condition_words", visit.conditionWords());
        typed.put("insured_value", visit.insuredValueMinor() == null ? "" : MoneyText.typed(visit.insuredValueMinor()));
        typed.put(
                "promised_on",
                visit.promisedOn() == null ? "" : visit.promisedOn().toString());
        typed.put("version", Integer.toString(visit.version()));
        return typed;
    }
}
