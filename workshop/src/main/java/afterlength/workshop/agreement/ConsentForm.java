package afterlength.workshop.agreement;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.MoneyText;
import afterlength.workshop.desk.Typed;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Reads an owner's word from what was typed. */
final class ConsentForm {
    private final Typed typed;
    private final Proposal proposal;
    private final LocalDate today;

    private ConsentForm(Typed typed, Proposal proposal, LocalDate today) {
        this.typed = typed;
        this.proposal = proposal;
        this.today = today;
    }

    static Consent read(Typed typed, Proposal proposal, LocalDate today) {
        return new ConsentForm(typed, proposal, today).read();
    }

    /** The ticked lines that are in the proposal. */
    static Set<Long> accepted(Typed typed, Proposal proposal) {
        return proposal.treatments().stream()
                .map(Treatment::id)
                .filter(id -> typed.ticked("line", Long.toString(id)))
                .collect(Collectors.toUnmodifiableSet());
    }

    /** The form before the owner's word is written in, with the lines of a scope ticked. */
    static Map<String, List<String>> offered(Proposal proposal, ScopeOffer offer, LocalDate today) {
        Map<String, List<String>> typed = new HashMap<>();
        typed.put(
                "line",
                offer.contained().stream().map(line -> Long.toString(line.id())).toList());
        typed.put("agreed_by", List.of(proposal.owner().name()));
        typed.put("agreed_on", List.of(today.toString()));
        LocalDate promised = proposal.visit().promisedOn();
        typed.put("promised_on", promised == null ? List.of() : List.of(promised.toString()));
        typed.put("hand", List.of(proposal.settings().usualHand()));
        return typed;
    }

    private Consent read() {
        LocalDate agreedOn = agreedOn();
        LocalDate promisedOn = typed.date("promised_on", "The promised day");
        if (promisedOn != null && promisedOn.isBefore(agreedOn)) {
            typed.note(
                    "promised_on",
                    "The promised day " + promisedOn + " lies before the day of the agreement, " + agreedOn
                            + "; choose that day or a later one, or leave it empty.");
        }
        Means means = typed.choice("means", "How it was agreed", Means.class);
        checkState();
        return new Consent(
                proposal.visit().id(),
                accepted(typed, proposal),
                agreedOn,
                typed.required("agreed_by", "Who agreed", 200),
                means == null ? Means.IN_PERSON : means,
                ceiling(),
                promisedOn,
                typed.text("remark", "The remark", 2000),
                typed.required("hand", "Who writes this down", 80));
    }

    private LocalDate agreedOn() {
        LocalDate day = typed.date("agreed_on", "The day of the agreement");
        LocalDate received = proposal.visit().receivedOn();
        if (day == null) {
            if (typed.problem("agreed_on").isEmpty()) {
                typed.note(
                        "agreed_on",
                        "The day of the agreement is missing. Write year-month-day, such as " + today + ".");
            }
            return today;
        }
        if (day.isBefore(received) || day.isAfter(today)) {
            typed.note(
                    "agreed_on",
                    "The day of the agreement is " + day + "; allowed is from the receipt on " + received
                            + " to today, " + today + ".");
        }
        return day;
    }

    private @Nullable Money ceiling() {
        Money ceiling = MoneyText.read(typed, "ceiling", "The ceiling");
        Money low = proposal.offers().sumOf(accepted(typed, proposal)).price().low();
        if (ceiling != null && ceiling.minor() < low.minor()) {
            typed.note(
                    "ceiling",
                    "The ceiling " + MoneyText.typed(ceiling) + " lies below the low end of the price, "
                            + MoneyText.typed(low) + "; take lines out, raise it or leave it empty.");
        }
        return ceiling;
    }

    private void checkState() {
        if (!typed.raw("state").equals(proposal.state())) {
            typed.note(
                    "line",
                    "The proposal changed while this form was open; look at the lines and prices as they stand now, then"
                            + " agree again.");
        }
    }
}
