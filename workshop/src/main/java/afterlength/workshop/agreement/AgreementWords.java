package afterlength.workshop.agreement;

import afterlength.workshop.desk.Days;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The sentences of this stage, the same on page, paper and chapter. */
final class AgreementWords {
    private AgreementWords() {}

    /** Where a visit stands: agreed, offered, or nothing yet. */
    static String answer(Proposal proposal) {
        return proposal.agreed()
                .map(agreed -> agreed(agreed.agreement(), proposal.words()))
                .orElseGet(() -> offered(proposal));
    }

    static String agreed(Agreement agreement, PriceWords words) {
        return "Agreed on " + Days.words(agreement.agreedOn()) + " with " + agreement.agreedBy() + ", "
                + agreement.means().words() + ": "
                + chosen(agreement.scope(), agreement.price(), new Tax(agreement.taxPermille()), words) + ".";
    }

    /** "sound, EUR 480 – 720, with 19 % tax"; when it is left, only what was done so far has a price. */
    private static String chosen(Scope scope, PriceSpan price, Tax tax, PriceWords words) {
        String priced = words.range(price) + ", " + tax.withWords();
        if (scope != Scope.LEAVE) {
            return scope.words() + ", " + priced;
        }
        return price.equals(PriceSpan.NOTHING)
                ? "it stays as it is"
                : "it stays as it is; for what was done so far " + priced;
    }

    /** The same for lines that are being chosen. */
    static String chosen(AgreeSum sum) {
        return capital(chosen(sum.scope(), sum.sum().price(), sum.words().tax(), sum.words()));
    }

    private static String offered(Proposal proposal) {
        if (proposal.treatments().isEmpty()) {
            return "Nothing is proposed yet.";
        }
        return proposal.offers().list().stream()
                .filter(offer -> offer.scope() != Scope.LEAVE && offer.differs())
                .min(Comparator.comparing(ScopeOffer::scope))
                .map(offer -> capital(offer.scope().words()) + " would take "
                        + PriceWords.hours(offer.sum().work()) + " by hand and come to "
                        + proposal.words().range(offer.sum().price()) + ", "
                        + proposal.words().tax().withWords() + ".")
                .orElse("Nothing is proposed yet.");
    }

    static String findings(List<FindingLine> findings) {
        return listed(findings, FindingLine::words);
    }

    static String titles(List<Treatment> treatments) {
        return listed(treatments, Treatment::title);
    }

    static String lines(List<AgreementLine> lines) {
        return listed(lines, AgreementLine::title);
    }

    static String undoing(List<Treatment> treatments) {
        return listed(treatments, line -> line.title() + " (" + line.undoing().words() + ")");
    }

    static String parts(List<TreatmentTemplate> parts) {
        return listed(parts, part -> part.title().toLowerCase(Locale.ROOT));
    }

    private static <T> String listed(List<T> things, Function<T, String> words) {
        return things.stream().map(words).collect(Collectors.joining("; "));
    }

    static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
