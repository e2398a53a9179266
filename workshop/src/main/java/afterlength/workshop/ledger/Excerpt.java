package afterlength.workshop.ledger;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Cuts the copy of a database down to what belongs to one row, such as an instrument. Kept is what names it, and what names that, and
 * so on down; then whatever the kept rows name themselves (the owner, a batch of glue); then the parts of those things, which are the
 * tables from which no reference leads to an instrument (the ingredients of a varnish). Nothing else stays, of settings only those
 * asked for.
 */
final class Excerpt {
    private static final String TOP = "instrument";

    private final Connection connection;
    private final List<Table> tables;

    private Excerpt(Connection connection) throws SQLException {
        this.connection = connection;
        tables = Tables.of(connection);
    }

    /** To be called inside the door of history, on a copy. */
    static void cut(Connection copy, String table, long id, Set<String> settings) throws SQLException {
        Excerpt excerpt = new Excerpt(copy);
        excerpt.mark(table, id);
        excerpt.removeTheRest(settings);
    }

    private void mark(String table, long id) throws SQLException {
        run("CREATE TEMP TABLE kept (tab TEXT NOT NULL, rid INTEGER NOT NULL, PRIMARY KEY (tab, rid)) WITHOUT ROWID");
        run("INSERT INTO kept SELECT '" + table + "', rowid FROM " + Table.quoted(table) + " WHERE id = " + id);
        repeat(this::down);
        repeat(this::up);
        repeat(this::parts);
    }

    private int down() throws SQLException {
        return grow(tables, true);
    }

    private int up() throws SQLException {
        int grown = 0;
        for (Table table : numbered(tables)) {
            for (Table.Reference reference : table.references()) {
                grown += run("INSERT OR IGNORE INTO kept SELECT '" + reference.table() + "', p.rowid FROM "
                        + Table.quoted(reference.table()) + " p JOIN " + Table.quoted(table.name()) + " c ON "
                        + joined(reference) + " JOIN kept k ON k.tab = '" + table.name() + "' AND k.rid = c.rowid");
            }
        }
        return grown;
    }

    private int parts() throws SQLException {
        Set<String> leading = leadingToInstruments();
        return grow(
                tables.stream().filter(table -> !leading.contains(table.name())).toList(), false);
    }

    /** Rows of these tables that name a kept row. */
    private int grow(List<Table> among, boolean toItself) throws SQLException {
        int grown = 0;
        for (Table table : numbered(among)) {
            for (Table.Reference reference : table.references()) {
                if (toItself || !reference.table().equals(TOP)) {
                    grown += run("INSERT OR IGNORE INTO kept SELECT '" + table.name() + "', c.rowid FROM "
                            + Table.quoted(table.name()) + " c JOIN " + Table.quoted(reference.table()) + " p ON "
                            + joined(reference) + " JOIN kept k ON k.tab = '" + reference.table()
                            + "' AND k.rid = p.rowid");
                }
            }
        }
        return grown;
    }

    private static String joined(Table.Reference reference) {
        return "c." + Table.quoted(reference.column()) + " = p." + Table.quoted(reference.named());
    }

    private Set<String> leadingToInstruments() {
        Set<String> leading = new HashSet<>(Set.of(TOP));
        boolean grown = true;
        while (grown) {
            grown = leading.addAll(tables.stream()
                    .filter(table -> table.references().stream().anyMatch(to -> leading.contains(to.table())))
                    .map(Table::name)
                    .collect(Collectors.toSet()));
        }
        return leading;
    }

    private void removeTheRest(Set<String> settings) throws SQLException {
        run("PRAGMA defer_foreign_keys = ON");
        for (Table table : tables) {
            if (table.name().equals("setting")) {
                run("DELETE FROM setting WHERE name NOT IN ("
                        + settings.stream().map(name -> "'" + name + "'").collect(Collectors.joining(", ")) + ")");
            } else if (isNumbered(table)) {
                run("DELETE FROM " + Table.quoted(table.name())
                        + " WHERE rowid NOT IN (SELECT rid FROM kept WHERE tab = '" + table.name() + "')");
            } else {
                removeOrphans(table);
            }
        }
        run("DROP TABLE kept");
    }

    /** A table whose rows have no number of their own stays as far as what it names. */
    private void removeOrphans(Table table) throws SQLException {
        String named = table.references().stream()
                .map(reference -> Table.quoted(reference.column()) + " IN (SELECT p." + Table.quoted(reference.named())
                        + " FROM " + Table.quoted(reference.table()) + " p JOIN kept k ON k.tab = '"
                        + reference.table() + "' AND k.rid = p.rowid)")
                .collect(Collectors.joining(" OR "));
        run("DELETE FROM " + Table.quoted(table.name()) + (named.isEmpty() ? "" : " WHERE NOT (" + named + ")"));
    }

    private static List<Table> numbered(List<Table> tables) {
        return tables.stream().filter(Excerpt::isNumbered).toList();
    }

    /** Only the readings of the air are kept without a number of their own. */
    private static boolean isNumbered(Table table) {
        return !table.name().equals("air_reading");
    }

    private void repeat(Growth growth) throws SQLException {
        while (growth.grow() > 0) {
            // until nothing is added any more
        }
    }

    private int run(String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            return statement.executeUpdate(sql);
        }
    }

    private interface Growth {
        int grow() throws SQLException;
    }
}
