package afterlength.workshop.desk;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * What a tablet needs to keep the pages on its home screen and to show Today when the workshop's machine does not answer: the card
 * that describes them, and the worker that stands between page and network. The worker must lie at the root to stand before all pages.
 */
public final class InstalledPages implements Room {
    private final Frames frames;

    public InstalledPages(Frames frames) {
        this.frames = frames;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/worker.js", context -> file(context, "worker.js", "text/javascript"));
        routes.get("/afterlength.webmanifest", this::manifest);
    }

    /** Asked about each time: a worker of an earlier version must not live on. */
    private static void file(Context context, String name, String type) {
        context.header("Cache-Control", "no-cache").contentType(type).result(bytes(name));
    }

    private static byte[] bytes(String name) {
        try (InputStream file = InstalledPages.class.getResourceAsStream("/afterlength/workshop/desk/files/" + name)) {
            if (file == null) {
                throw new IllegalStateException("the program was built without " + name);
            }
            return file.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private void manifest(Context context) {
        String shop = frames.of("").sign().shopName();
        context.header("Cache-Control", "no-cache")
                .contentType("application/manifest+json")
                .result(new String(bytes("afterlength.webmanifest"), java.nio.charset.StandardCharsets.UTF_8)
                        .replace("SHOP", json(shop)));
    }

    private static String json(String text) {
        StringBuilder escaped = new StringBuilder();
        text.chars()
                .forEach(c -> escaped.append(
                        c < ' ' || c == '"' || c == '\\' ? String.format("\\u%04x", c) : Character.toString(c)));
        return escaped.toString();
    }
}
