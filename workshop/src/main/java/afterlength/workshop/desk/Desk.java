package afterlength.workshop.desk;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.staticfiles.Location;
import java.util.List;
import java.util.Map;

/**
 * The server behind the pages. It listens on this machine only; what else keeps strangers out stands in {@link Doorkeeper}.
 */
public final class Desk implements AutoCloseable {
    /** The address of this machine itself; no other machine reaches it. */
    public static final String THIS_MACHINE = "127.0.0.1";

    /**
     * All files of one upload together; a larger one is refused before it is read. How large a single file may be is judged by
     * the stage that takes it, so that one large file does not turn away the others.
     */
    public static final long LARGEST_UPLOAD_MB = 1000;

    private final Javalin server;

    private Desk(Javalin server) {
        this.server = server;
    }

    /**
     * Opens the server with the pages of these rooms.
     *
     * @param port the port to listen on, 0 for any free one
     * @throws io.javalin.util.JavalinBindException when the port is taken
     */
    public static Desk open(int port, List<Room> rooms) {
        Javalin server = Javalin.create(config -> configure(config, rooms));
        server.start(THIS_MACHINE, port);
        return new Desk(server);
    }

    private static void configure(JavalinConfig config, List<Room> rooms) {
        config.startup.showJavalinBanner = false;
        config.http.maxRequestSize = 1_000_000;
        config.jetty.multipartConfig.maxFileSize(LARGEST_UPLOAD_MB, SizeUnit.MB);
        config.jetty.multipartConfig.maxTotalRequestSize(LARGEST_UPLOAD_MB, SizeUnit.MB);
        keep(config, "/files", "/afterlength/workshop/desk/files");
        keep(config, "/fonts", "/afterlength/workshop/paper/fonts");
        Doorkeeper.stand(config.routes);
        Refusals.answer(config.routes);
        rooms.forEach(room -> room.open(config.routes));
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
        return "http://" + THIS_MACHINE + ":" + server.port() + "/";
    }

    @Override
    public void close() {
        server.stop();
    }
}
