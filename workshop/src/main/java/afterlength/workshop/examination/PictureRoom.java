package afterlength.workshop.examination;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import afterlength.workshop.ledger.Photographs;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Serves picture files. An address that carries the digits of the file's name may be kept by a browser for a year, since other
 * bytes would have other digits; an address without them is asked about each time, because the same number can mean another
 * picture in another shop on this machine.
 */
public final class PictureRoom implements Room {
    private static final String FOR_A_YEAR = "private, max-age=31536000, immutable";

    private final PhotographStore photographs;
    private final Photographs originals;
    private final SmallPictures small;

    public PictureRoom(PhotographStore photographs, Photographs originals, SmallPictures small) {
        this.photographs = photographs;
        this.originals = originals;
        this.small = small;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/photographs/{photograph}", this::original);
        routes.get("/photographs/{photograph}/small", this::small);
    }

    /** What can fail comes before the headers: a refusal must not be kept for a year. */
    private void original(Context context) {
        Photograph photograph = photographs.get(Addresses.id(context, "photograph"));
        Path file = originals.file(photograph.sha256());
        if (!Files.isRegularFile(file)) {
            throw new NotHere("file of the photograph", photograph.sha256());
        }
        if (!knownAlready(context, photograph, "")) {
            context.contentType(photograph.mediaType());
            send(context, file);
        }
    }

    private void small(Context context) {
        Photograph photograph = photographs.get(Addresses.id(context, "photograph"));
        byte[] jpeg = small.small(photograph);
        if (!knownAlready(context, photograph, "-small")) {
            context.contentType("image/jpeg").result(jpeg);
        }
    }

    private static boolean knownAlready(Context context, Photograph photograph, String kind) {
        String mark = "\"" + photograph.sha256() + kind + "\"";
        boolean named = photograph.shortName().equals(context.queryParam("name"));
        context.header("ETag", mark).header("Cache-Control", named ? FOR_A_YEAR : "no-cache");
        boolean known = mark.equals(context.header("If-None-Match"));
        if (known) {
            context.status(304);
        }
        return known;
    }

    private static void send(Context context, Path file) {
        try {
            context.header("Content-Length", Long.toString(Files.size(file)));
            context.result(Files.newInputStream(file));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
