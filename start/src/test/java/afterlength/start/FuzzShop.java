package afterlength.start;

import afterlength.workshop.desk.Desk;
import afterlength.workshop.ledger.ShopFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * An open copy of the demonstration shop that can be put back to its beginning while it stays open, so that pages stay short and
 * every some hundred cases begin alike. Better plans are looked for hardly at all.
 */
final class FuzzShop implements AutoCloseable {
    private static final double SEARCH_S = 0.005;
    private static final List<String> FILES = List.of("photographs", "loggers", "thumbnails", "backups");

    private final Path beginning;
    private final ShopFolder folder;
    private final Desk desk;
    private final QuickCaller caller;
    private final Map<String, List<PageForm>> forms;

    private FuzzShop(Path beginning, ShopFolder folder, Desk desk) throws IOException {
        this.beginning = beginning;
        this.folder = folder;
        this.desk = desk;
        caller = new QuickCaller(desk.address());
        forms = new Crawl(new Caller(desk.address())).walk().forms();
    }

    /** Two folders are made here: one to work in, and one that stays as it is. */
    static FuzzShop in(Path place) throws IOException {
        Path beginning = FilledShop.copyTo(place.resolve("beginning"));
        ShopFolder folder = ShopFolder.open(FilledShop.copyTo(place.resolve("shop")));
        sql(folder.database(), "VACUUM INTO '" + beginning.resolve("whole.db") + "'");
        Desk desk = House.searchingFor(SEARCH_S, folder, Clock.system(ZoneId.systemDefault()))
                .openDesk(0);
        return new FuzzShop(beginning, folder, desk);
    }

    QuickCaller caller() {
        return caller;
    }

    /** The forms on its pages at the beginning, by kind. */
    Map<String, List<PageForm>> forms() {
        return forms;
    }

    /** Puts everything back to the beginning. */
    void renew() throws IOException {
        sql(folder.database(), "restore from '" + beginning.resolve("whole.db") + "'");
        for (String name : FILES) {
            renew(beginning.resolve(name), folder.root().resolve(name));
        }
    }

    /** Files are never altered, only added or taken away. */
    private static void renew(Path first, Path now) throws IOException {
        for (Path each : list(now)) {
            if (Files.isRegularFile(each) && !Files.exists(first.resolve(each.getFileName()))) {
                Files.deleteIfExists(each);
            }
        }
        for (Path each : list(first)) {
            Path target = now.resolve(each.getFileName());
            if (Files.isRegularFile(each) && !Files.exists(target)) {
                Files.copy(each, target);
            }
        }
    }

    private static List<Path> list(Path place) throws IOException {
        if (!Files.isDirectory(place)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(place)) {
            return all.toList();
        }
    }

    private static void sql(Path database, String words) throws IOException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + database);
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA busy_timeout = 20000");
            statement.executeUpdate(words);
        } catch (SQLException broken) {
            throw new IOException(broken);
        }
    }

    @Override
    public void close() throws IOException {
        caller.close();
        desk.close();
    }
}
