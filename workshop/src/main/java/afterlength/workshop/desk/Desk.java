package afterlength.workshop.desk;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.staticfiles.Location;
import java.util.List;
import java.util.Map;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.MinimumDataRateHandler;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/**
 * The server behind the pages. It listens on this machine only, unless a door for tablets is opened; what else keeps strangers out
 * stands in {@link Doorkeeper}.
 */
public final class Desk implements AutoCloseable {
    /** The address of this machine itself; no other machine reaches it. */
    public static final String THIS_MACHINE = "127.0.0.1";

    /**
     * All files of one upload together; a larger one is refused before it is read. How large a single file may be is judged by
     * the stage that takes it, so that one large file does not turn away the others.
     */
    public static final long LARGEST_UPLOAD_MB = 500;

    /** Whoever sends more slowly than this holds a place that others need; the slowest network in a shop is far quicker. */
    private static final int SLOWEST_BYTES_A_SECOND = 500;

    private static final int LONGEST_SILENCE_MS = 30_000;
    /** A form that asks sends its fields in its address; beyond this the server itself refuses, in a word of its own. */
    private static final int LONGEST_ADDRESS_BYTES = 65_536;

    private static final int LARGEST_FORM_BYTES = 1_000_000;

    private final Javalin server;
    private final String scheme;
    private final Runnable alsoShut;

    private Desk(Javalin server, String scheme, Runnable alsoShut) {
        this.server = server;
        this.scheme = scheme;
        this.alsoShut = alsoShut;
    }

    /**
     * Opens the server with the pages of these rooms.
     *
     * @param port the port to listen on, 0 for any free one
     * @throws io.javalin.util.JavalinBindException when the port is taken
     */
    public static Desk open(int port, List<Room> rooms) {
        return open(port, rooms, () -> {});
    }

    /** The same with something else that shuts when the desk does. */
    public static Desk open(int port, List<Room> rooms, Runnable alsoShut) {
        Javalin server = Javalin.create(config -> configure(config, new OwnMachine(), rooms));
        server.start(THIS_MACHINE, port);
        return new Desk(server, "http", alsoShut);
    }

    /**
     * Opens the same pages to the machine's network, encrypted.
     *
     * @throws io.javalin.util.JavalinBindException when the port is taken
     */
    public static Desk openToNetwork(int port, SslContextFactory.Server key, Entrance entrance, List<Room> rooms) {
        Javalin server = Javalin.create(config -> {
            configure(config, entrance, rooms);
            config.jetty.addConnector((jetty, http) -> {
                ServerConnector connector = new ServerConnector(jetty, key, new HttpConnectionFactory(http));
                connector.setPort(port);
                return connector;
            });
        });
        server.start();
        return new Desk(server, "https", () -> {});
    }

    private static void configure(JavalinConfig config, Entrance entrance, List<Room> rooms) {
        config.startup.showJavalinBanner = false;
        config.http.maxRequestSize = LARGEST_FORM_BYTES;
        config.jetty.multipartConfig.maxFileSize(LARGEST_UPLOAD_MB, SizeUnit.MB);
        config.jetty.multipartConfig.maxTotalRequestSize(LARGEST_UPLOAD_MB, SizeUnit.MB);
        config.jetty.modifyHttpConfiguration(Desk::patience);
        config.jetty.modifyServletContextHandler(
                pages -> pages.insertHandler(new MinimumDataRateHandler(SLOWEST_BYTES_A_SECOND, 0)));
        keep(config, "/files", "/afterlength/workshop/desk/files");
        keep(config, "/fonts", "/afterlength/workshop/paper/fonts");
        Doorkeeper.stand(config.routes, entrance);
        Refusals.answer(config.routes);
        rooms.forEach(room -> room.open(config.routes));
    }

    private static void patience(HttpConfiguration http) {
        http.setIdleTimeout(LONGEST_SILENCE_MS);
        http.setRequestHeaderSize(LONGEST_ADDRESS_BYTES);
        http.setSendServerVersion(false);
    }

    private static void keep(JavalinConfig config, String address, String folder) {
        config.staticFiles.add(files -> {
            files.hostedPath = address;
            files.directory = folder;
            files.location = Location.CLASSPATH;
            files.headers = Map.of("Cache-Control", "max-age=3600");
        });
    }

    public String address() {
        return scheme + "://" + THIS_MACHINE + ":" + port() + "/";
    }

    public int port() {
        return server.port();
    }

    @Override
    public void close() {
        alsoShut.run();
        server.stop();
    }
}
