package afterlength.workshop.archive;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.instrument.Found;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.OwnerStore;
import java.util.ArrayList;
import java.util.List;

/**
 * What an archive can be made of: the whole shop, what was asked for, and the first instruments and owners in which words stand.
 *
 * @param cut whether there are more
 */
record ArchiveChoices(List<Choice> list, boolean cut) {
    /** A list that a person still looks through. */
    static final int MOST = 60;

    /** Whether a value names an instrument or an owner by its number. */
    static boolean names(String what) {
        return what.matches("(instrument|owner)-[1-9]\\d{0,17}");
    }

    /**
     * @param words what to look for, empty for everything
     * @param chosen the value that is chosen already, which stays among the choices
     */
    static ArchiveChoices of(String words, String chosen, InstrumentStore instruments, OwnerStore owners) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("shop", "the whole shop, for the shop"));
        Found found = instruments.find(words, MOST);
        found.lines().forEach(each -> choices.add(instrument(each.id(), each.name(), each.owner())));
        List<Owner> people = owners.find(words, MOST + 1);
        people.stream().limit(MOST).map(ArchiveChoices::owner).forEach(choices::add);
        if (names(chosen) && choices.stream().noneMatch(choice -> choice.value().equals(chosen))) {
            choices.add(1, named(chosen, instruments, owners));
        }
        return new ArchiveChoices(List.copyOf(choices), found.isCut() || people.size() > MOST);
    }

    private static Choice named(String chosen, InstrumentStore instruments, OwnerStore owners) {
        long id = Long.parseLong(chosen.substring(chosen.indexOf('-') + 1));
        if (chosen.startsWith("owner")) {
            return owner(owners.get(id));
        }
        var instrument = instruments.get(id);
        return instrument(
                id, instrument.name(), owners.get(instrument.ownerId()).name());
    }

    private static Choice instrument(long id, String name, String owner) {
        return new Choice("instrument-" + id, "the instrument “" + name + "” of " + owner + ", for its owner");
    }

    private static Choice owner(Owner owner) {
        return new Choice("owner-" + owner.id(), "everything kept about " + owner.name() + ", for that person");
    }
}
