package afterlength.workshop.archive;

import afterlength.workshop.ledger.Settings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The index over the payload: RO-Crate 1.2 metadata, which names every file, its kind and size. Source: docs/sources.md#ro-crate. */
final class Crate {
    static final String FILE = "ro-crate-metadata.json";
    static final String CONTEXT = "https://w3id.org/ro/crate/1.2/context";

    private final Settings shop;
    private final ArchiveWish wish;
    private final LocalDate today;
    private final String program;

    Crate(Settings shop, ArchiveWish wish, LocalDate today, String program) {
        this.shop = shop;
        this.wish = wish;
        this.today = today;
        this.program = program;
    }

    String text(List<Payload> files) {
        List<Object> graph = new ArrayList<>();
        graph.add(Json.object(
                "@id",
                FILE,
                "@type",
                "CreativeWork",
                "conformsTo",
                ref("https://w3id.org/ro/crate/1.2"),
                "about",
                ref("./")));
        graph.add(root(files));
        graph.add(Json.object("@id", "#shop", "@type", "Organization", "name", shop.shopName()));
        graph.add(Json.object("@id", "#program", "@type", "SoftwareApplication", "name", program));
        graph.add(Json.object(
                "@id",
                "#terms",
                "@type",
                "CreativeWork",
                "name",
                "Private record",
                "description",
                wish.goesOut()
                        ? "For the owner of the instrument and whoever the owner gives it to."
                        : "For the workshop. Holds data of owners; not to be handed out as it is."));
        files.forEach(file -> graph.add(entity(file)));
        return Json.text(Json.object("@context", CONTEXT, "@graph", graph));
    }

    private Map<String, Object> root(List<Payload> files) {
        return Json.object(
                "@id",
                "./",
                "@type",
                "Dataset",
                "name",
                "Restoration records of " + shop.shopName() + ": " + wish.words(),
                "description",
                "What was seen, measured, agreed and done on bowed string instruments, with photographs, papers and all rows of the"
                        + " record." + (shop.demonstration() ? " Demonstration: everything in it is invented." : ""),
                "datePublished",
                today.toString(),
                "license",
                ref("#terms"),
                "author",
                ref("#shop"),
                "creator",
                ref("#program"),
                "hasPart",
                files.stream().map(file -> (Object) ref(file.path())).toList());
    }

    private static Map<String, Object> entity(Payload file) {
        return Json.object(
                "@id",
                file.path(),
                "@type",
                "File",
                "name",
                name(file.path()),
                "encodingFormat",
                kind(file.path()),
                "contentSize",
                Long.toString(file.bytes()),
                "sha256",
                file.sha256());
    }

    private static String name(String path) {
        String last = path.substring(path.lastIndexOf('/') + 1);
        if (path.startsWith(Contents.PHOTOGRAPHS)) {
            return "Photograph " + last.substring(0, 12);
        }
        if (path.startsWith(Contents.LOGGERS)) {
            return "File of a climate logger " + last.substring(0, 12);
        }
        return path.startsWith(Contents.TABLES) ? "Rows of the table " + last.replace(".csv", "") : last;
    }

    private static String kind(String path) {
        String ending = path.substring(path.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return switch (ending) {
            case "jpg" -> "image/jpeg";
            case "png" -> "image/png";
            case "svg" -> "image/svg+xml";
            case "pdf" -> "application/pdf";
            case "csv" -> "text/csv";
            case "vcf" -> "text/vcard";
            case "ics" -> "text/calendar";
            case "json", "jsonld" -> "application/ld+json";
            default -> "text/plain";
        };
    }

    private static Map<String, Object> ref(String id) {
        return Json.object("@id", id);
    }
}
