package afterlength.workshop.examination;

import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.Settings;
import java.util.Arrays;
import java.util.List;

/**
 * What a person who leaves an instrument takes home: what came, for whom, in what state at a first look, at what value as the owner
 * states it, with the pictures of that moment and two signatures ({@code docs/sources.md#receipt-contents}).
 *
 * @param pictures taken before work; each with the first signs of its fingerprint, so that a later copy can be told from it
 */
record CustodyReceipt(Settings shop, Instrument instrument, Owner owner, Visit visit, List<Photograph> pictures) {

    /** Who stands at the desk: the owner unless somebody else brought it. */
    String bearer() {
        return visit.broughtBy().isEmpty() ? owner.name() : visit.broughtBy();
    }

    boolean broughtByAnother() {
        return !visit.broughtBy().isEmpty() && !visit.broughtBy().equals(owner.name());
    }

    /** One thing a box to tick: what stands between commas, semicolons or on lines of its own. */
    List<String> accessories() {
        return Arrays.stream(visit.accessories().split("[,;\n]"))
                .map(thing -> thing.strip().replaceAll("\\.$", ""))
                .filter(thing -> !thing.isEmpty())
                .toList();
    }

    static String nameOf(Photograph photograph) {
        return "picture-" + photograph.id();
    }
}
