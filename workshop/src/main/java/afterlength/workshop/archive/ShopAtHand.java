package afterlength.workshop.archive;

import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.ShopFolder;
import java.util.Map;

/** A shop that is open, with its papers. */
public record ShopAtHand(ShopFolder folder, Ledger ledger, Papers papers) implements AutoCloseable {
    /** Lets go of the database; for a copy. */
    @Override
    public void close() {
        ledger.close();
    }

    /** Sets the papers of a visit, by the name of their file. */
    @FunctionalInterface
    public interface Papers {
        Map<String, byte[]> of(Visit visit);
    }

    /** Opens a shop in another folder in the same way; an archive is made of a copy. */
    @FunctionalInterface
    public interface Opener {
        ShopAtHand open(ShopFolder folder);
    }
}
