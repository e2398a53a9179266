package afterlength.workshop.desk;

import io.javalin.config.RoutesConfig;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Where the numbers come from: the bibliography {@code docs/sources.md}, which the build puts beside this class. */
public final class SourcesPages implements Room {
    private final Frames frames;
    private final List<SourceText.Block> blocks;

    public SourcesPages(Frames frames) {
        this(frames, bundled());
    }

    SourcesPages(Frames frames, String text) {
        this.frames = frames;
        this.blocks = SourceText.read(text);
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get(
                "/sources",
                context -> Templates.show(
                        context,
                        new SourcesPage(
                                frames.at(Frame.Place.SHELF, "Where the numbers come from")
                                        .back("/shelf", "Shelf"),
                                blocks)));
    }

    static String bundled() {
        try (InputStream file = SourcesPages.class.getResourceAsStream("/afterlength/workshop/desk/sources.md")) {
            return file == null
                    ? "This copy of the program was built without its list of sources, docs/sources.md."
                    : new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException("the list of sources cannot be read", broken);
        }
    }
}
