package afterlength.workshop.agreement;

import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.Settings;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Everything that a visit's proposal shows: what was found, what could be done, what it comes to, what was agreed.
 *
 * @param ready between which days each way would be ready, as far as that was planned
 * @param agreements the latest first
 */
record Proposal(
        Visit visit,
        Instrument instrument,
        Owner owner,
        Settings settings,
        List<FindingLine> findings,
        List<Treatment> treatments,
        List<AnsweredFinding> answers,
        Offers offers,
        Map<Scope, ReadySpan> ready,
        List<Agreed> agreements) {

    PriceWords words() {
        return PriceWords.of(settings);
    }

    List<ReckonedLine> lines() {
        return offers.lines();
    }

    Optional<Agreed> agreed() {
        return agreements.stream().findFirst();
    }

    List<Agreed> replaced() {
        return agreements.stream().skip(1).toList();
    }

    /** "between 3 and 12 December 2026", or that nobody planned it yet. */
    String readyWords(ScopeOffer offer) {
        return offer.hasWorkAhead() ? PriceWords.ready(ready.get(offer.scope())) : "";
    }

    /** The lines that answer a finding. */
    List<Treatment> answering(FindingLine finding) {
        return treatments.stream()
                .filter(treatment -> answers.contains(new AnsweredFinding(treatment.id(), finding.id())))
                .toList();
    }

    /** The findings that a line answers. */
    List<FindingLine> answeredBy(Treatment treatment) {
        return findings.stream()
                .filter(finding -> answers.contains(new AnsweredFinding(treatment.id(), finding.id())))
                .toList();
    }

    List<FindingLine> unanswered() {
        return findings.stream().filter(finding -> answering(finding).isEmpty()).toList();
    }

    /** Templates of the work around every job that no line was made from. */
    List<TreatmentTemplate> jobNotYetIn() {
        return TreatmentTemplates.list().stream()
                .filter(template -> !template.job().treatsTheInstrument())
                .filter(template ->
                        treatments.stream().noneMatch(line -> line.template().equals(template.key())))
                .toList();
    }

    /** What differs from the agreement that holds, as whole sentences. */
    List<String> changedSinceAgreed() {
        return agreed().map(agreed -> SinceAgreed.list(agreed, this)).orElse(List.of());
    }

    /** The state a form was filled from: every line with its version, and the agreement that held. */
    String state() {
        String agreement =
                agreed().map(agreed -> Long.toString(agreed.agreement().id())).orElse("none");
        return treatments.stream()
                .map(treatment -> treatment.id() + ":" + treatment.version())
                .collect(Collectors.joining(",", agreement + ";", ""));
    }
}
