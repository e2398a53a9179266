package afterlength.workshop.ledger;

import java.util.List;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;

/**
 * The one way past the triggers that keep history, docs/decisions/0019: they are taken off and put on again, word for word, inside
 * the transaction of the change, so that a change that fails leaves them on.
 */
final class HistoryDoor {
    private HistoryDoor() {}

    static <T> T open(Handle handle, Function<Handle, T> change) {
        List<Trigger> triggers = handle.createQuery(
                        "SELECT name, sql FROM sqlite_master WHERE type = 'trigger' ORDER BY name")
                .mapTo(Trigger.class)
                .list();
        triggers.forEach(trigger -> handle.execute("DROP TRIGGER " + Table.quoted(trigger.name())));
        T answer = change.apply(handle);
        triggers.forEach(trigger -> handle.execute(trigger.sql()));
        return answer;
    }

    /** A trigger and the words that made it. */
    record Trigger(String name, String sql) {}
}
