package afterlength.workshop.agreement;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.SettingsStore;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Keeps what owners chose. Rows are only ever added; the latest agreement of a visit replaces the one before it. */
public final class AgreementStore {
    private final Ledger ledger;
    private final SettingsStore settings;
    private final Clock clock;
    private final List<AfterAgreement> afterwards;

    public AgreementStore(Ledger ledger, SettingsStore settings, Clock clock, List<AfterAgreement> afterwards) {
        this.ledger = ledger;
        this.settings = settings;
        this.clock = clock;
        this.afterwards = List.copyOf(afterwards);
    }

    /** The agreement that holds for a visit. */
    public Optional<Agreement> findNow(long visitId) {
        return ledger.read(handle -> findNow(handle, visitId));
    }

    /** All agreements of a visit, the latest first. */
    public List<Agreement> listOf(long visitId) {
        return ledger.read(
                handle -> handle.createQuery("SELECT * FROM agreement WHERE visit_id = :visit ORDER BY id DESC")
                        .bind("visit", visitId)
                        .mapTo(Agreement.class)
                        .list());
    }

    /** The lines as they were offered, accepted or not, in the order of the proposal. */
    public List<AgreementLine> listLines(long agreementId) {
        return ledger.read(handle -> handle.createQuery(
                        "SELECT * FROM agreement_line WHERE agreement_id = :id ORDER BY position, treatment_id")
                .bind("id", agreementId)
                .mapTo(AgreementLine.class)
                .list());
    }

    /**
     * Keeps the owner's word with the prices of this moment, sets the promised day of the visit, and tells the stages after this
     * one: all together or not at all.
     *
     * @throws NotHere when an accepted treatment is not in the proposal
     */
    public Agreement agree(Consent consent) {
        Settings now = settings.get();
        return ledger.write(handle -> {
            List<Treatment> offered = TreatmentStore.list(handle, consent.visitId(), false);
            requireOffered(consent, offered);
            Offers offers = Offers.of(offered, now);
            Agreement agreement = insert(handle, drawUp(handle, consent, offers, now));
            keepLines(handle, agreement, consent, offers);
            if (consent.promisedOn() != null) {
                VisitStore.promise(handle, consent.visitId(), consent.promisedOn());
            }
            List<Treatment> accepted = offered.stream()
                    .filter(treatment -> consent.accepted().contains(treatment.id()))
                    .toList();
            afterwards.forEach(stage -> stage.agreed(handle, agreement, accepted));
            return agreement;
        });
    }

    private static void requireOffered(Consent consent, List<Treatment> offered) {
        List<Long> ids = offered.stream().map(Treatment::id).toList();
        consent.accepted().stream().filter(id -> !ids.contains(id)).findFirst().ifPresent(id -> {
            throw new NotHere("treatment", id);
        });
    }

    private Agreement drawUp(Handle handle, Consent consent, Offers offers, Settings now) {
        List<Treatment> offered =
                offers.lines().stream().map(ReckonedLine::treatment).toList();
        PriceSpan price = offers.sumOf(consent.accepted()).price();
        return new Agreement(
                0,
                consent.visitId(),
                findNow(handle, consent.visitId()).map(Agreement::id).orElse(null),
                Scope.of(offered, consent.accepted()),
                consent.agreedOn(),
                consent.agreedBy(),
                consent.means(),
                price.low(),
                price.expected(),
                price.high(),
                now.taxPermille(),
                now.perHour(),
                consent.ceiling(),
                consent.promisedOn(),
                consent.remark(),
                clock.instant().truncatedTo(ChronoUnit.SECONDS),
                consent.hand());
    }

    private static Optional<Agreement> findNow(Handle handle, long visitId) {
        return handle.createQuery("SELECT * FROM agreement_now WHERE visit_id = :visit")
                .bind("visit", visitId)
                .mapTo(Agreement.class)
                .findOne();
    }

    private static Agreement insert(Handle handle, Agreement agreement) {
        long id = handle.createUpdate("""
                        INSERT INTO agreement (visit_id, replaces, scope, agreed_on, agreed_by, means, low_minor,
                          expected_minor, high_minor, tax_permille, per_hour_minor, ceiling_minor, promised_on, remark,
                          written_at, hand)
                        VALUES (:visitId, :replaces, :scope, :agreedOn, :agreedBy, :means, :lowMinor,
                          :expectedMinor, :highMinor, :taxPermille, :perHourMinor, :ceilingMinor, :promisedOn, :remark,
                          :writtenAt, :hand)
                        """)
                .bindMethods(agreement)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        return handle.createQuery("SELECT * FROM agreement WHERE id = :id")
                .bind("id", id)
                .mapTo(Agreement.class)
                .one();
    }

    private static void keepLines(Handle handle, Agreement agreement, Consent consent, Offers offers) {
        int position = 0;
        for (ReckonedLine line : offers.lines()) {
            boolean accepted = consent.accepted().contains(line.id());
            keep(handle, AgreementLine.of(agreement.id(), ++position, line, accepted));
        }
    }

    private static void keep(Handle handle, AgreementLine line) {
        handle.createUpdate("""
                INSERT INTO agreement_line
                  (agreement_id, treatment_id, position, title, accepted, low_minor, expected_minor, high_minor)
                VALUES
                  (:agreementId, :treatmentId, :position, :title, :accepted, :lowMinor, :expectedMinor, :highMinor)
                """).bindMethods(line).execute();
    }
}
