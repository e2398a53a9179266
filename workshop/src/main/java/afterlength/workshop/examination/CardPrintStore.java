package afterlength.workshop.examination;

import afterlength.sight.card.Card;
import afterlength.sight.measure.Print;
import afterlength.workshop.ledger.Ledger;
import java.util.Optional;

/** Keeps the measured check lines of the shop's printed cards; of each kind of card the last row holds. */
public final class CardPrintStore {
    private final Ledger ledger;

    public CardPrintStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public void add(CardPrint print) {
        ledger.change(handle -> handle.createUpdate("""
                        INSERT INTO card_print (card, level_mm, upright_mm, written_at) VALUES (:card, :levelMm, :uprightMm, :writtenAt)
                        """).bindMethods(print).execute());
    }

    public Optional<CardPrint> find(Card card) {
        return ledger.read(
                handle -> handle.createQuery("SELECT * FROM card_print WHERE card = :card ORDER BY id DESC LIMIT 1")
                        .bind("card", card)
                        .mapTo(CardPrint.class)
                        .findOne());
    }

    /** What is counted with; unchecked where nobody measured the lines. */
    Print print(Card card) {
        return find(card)
                .map(print -> Print.checked(print.levelMm(), print.uprightMm()))
                .orElse(Print.UNCHECKED);
    }
}
