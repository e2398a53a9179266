package afterlength.workshop.examination;

import afterlength.sight.card.Card;
import afterlength.sight.measure.Print;
import afterlength.workshop.ledger.Ledger;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Keeps the measured check lines of the shop's printed cards, and which sheet lies in a photograph. Of each sheet the last row holds; a
 * photograph of which nothing was said is taken to show the sheet that was measured last.
 */
public final class CardPrintStore {
    private final Ledger ledger;

    public CardPrintStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public void add(CardPrint print) {
        ledger.change(handle -> handle.createUpdate("""
                        INSERT INTO card_print (card, number, level_mm, upright_mm, written_at)
                        VALUES (:card, :number, :levelMm, :uprightMm, :writtenAt)
                        """).bindMethods(print).execute());
    }

    /** What holds of each sheet, in the order of cards and numbers. */
    public List<CardPrint> list() {
        return ledger.read(
                handle -> handle.createQuery("""
                        SELECT * FROM card_print p WHERE NOT EXISTS (
                          SELECT 1 FROM card_print later WHERE later.card = p.card AND later.number = p.number AND later.id > p.id)
                        ORDER BY card, number
                        """).mapTo(CardPrint.class).list());
    }

    /** The sheet of this kind that was measured last. */
    public Optional<CardPrint> find(Card card) {
        return ledger.read(
                handle -> handle.createQuery("SELECT * FROM card_print WHERE card = :card ORDER BY id DESC LIMIT 1")
                        .bind("card", card)
                        .mapTo(CardPrint.class)
                        .findOne());
    }

    Optional<CardPrint> find(Card card, int number) {
        return list().stream()
                .filter(print -> print.card() == card && print.number() == number)
                .findFirst();
    }

    /** Notes which sheet lies in a photograph. */
    public void putNumber(long photographId, int number, Instant at) {
        ledger.change(handle -> handle.createUpdate(
                        "INSERT INTO card_in_photograph (photograph_id, number, written_at) VALUES (:photograph, :number, :at)")
                .bind("photograph", photographId)
                .bind("number", number)
                .bind("at", at)
                .execute());
    }

    /** The number of the sheet in a photograph, when it was told. */
    Optional<Integer> findNumber(long photographId) {
        return ledger.read(handle -> handle.createQuery(
                        "SELECT number FROM card_in_photograph WHERE photograph_id = :photograph ORDER BY id DESC LIMIT 1")
                .bind("photograph", photographId)
                .mapTo(Integer.class)
                .findOne());
    }

    /** What is counted with when the sheet is told, or the sheet measured last when it is not. */
    Print print(Card card, @Nullable Integer number) {
        return (number == null ? find(card) : find(card, number))
                .map(print -> Print.checked(print.levelMm(), print.uprightMm()))
                .orElse(Print.UNCHECKED);
    }

    /** What is counted with in a photograph; unchecked where nobody measured the lines of its sheet. */
    Print print(Card card, long photographId) {
        return print(card, findNumber(photographId).orElse(null));
    }
}
