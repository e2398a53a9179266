package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.start.demo.DemoClock;
import afterlength.start.demo.DemoShop;
import afterlength.workshop.archive.ArchiveReader;
import afterlength.workshop.archive.ArchiveWish;
import afterlength.workshop.archive.Progress;
import afterlength.workshop.ledger.ShopFolder;
import com.apicatalog.jsonld.JsonLd;
import com.apicatalog.jsonld.JsonLdError;
import com.apicatalog.jsonld.JsonLdErrorCode;
import com.apicatalog.jsonld.document.JsonDocument;
import com.apicatalog.jsonld.loader.DocumentLoader;
import jakarta.json.JsonArray;
import jakarta.json.JsonObject;
import jakarta.json.JsonValue;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The archive of the demonstration shop: read back twice, and its linked data held against the general JSON-LD library. */
class DemoArchiveTest {
    private static final Instant TODAY = Instant.parse("2026-11-28T10:00:00Z");
    private static final DemoClock CLOCK = new DemoClock(TODAY, ZoneOffset.UTC);

    @TempDir
    static Path root;

    private static Map<String, byte[]> files = Map.of();

    @BeforeAll
    static void make() throws IOException {
        House house = House.of(ShopFolder.open(root.resolve("shop")), CLOCK);
        DemoShop.fill(house.demoStores(CLOCK), TODAY);
        house.archiveMaker().write(ArchiveWish.wholeShop(), root.resolve("first.zip"), Progress.NOBODY);
        files = files(root.resolve("first.zip"));
    }

    private static Map<String, byte[]> files(Path archive) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(archive))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName().replaceFirst("^[^/]*/", ""), zip.readAllBytes());
            }
        }
        return files;
    }

    @Test
    void theDemonstrationShopComesBackTwice() throws Exception {
        Path back = root.resolve("back");
        ArchiveReader.read(root.resolve("first.zip"), back, Progress.NOBODY);
        Map<String, List<String>> rows = rows(root.resolve("shop"));
        assertThat(rows(back)).isEqualTo(rows);
        assertThat(kept(back)).isEqualTo(kept(root.resolve("shop"))).hasSizeGreaterThan(10);
        assertThat(rows.values().stream().filter(table -> !table.isEmpty())).hasSizeGreaterThan(20);
        House again = House.of(ShopFolder.open(back), CLOCK);
        again.archiveMaker().write(ArchiveWish.wholeShop(), root.resolve("second.zip"), Progress.NOBODY);
        Path twice = root.resolve("twice");
        ArchiveReader.read(root.resolve("second.zip"), twice, Progress.NOBODY);
        assertThat(rows(twice)).isEqualTo(rows);
        assertThat(kept(twice)).isEqualTo(kept(root.resolve("shop")));
    }

    /** Every row of every table of ours, each value with its kind, by plain SQL. */
    private static Map<String, List<String>> rows(Path shop) throws Exception {
        Map<String, List<String>> rows = new TreeMap<>();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + shop.resolve("shop.db"));
                Statement statement = connection.createStatement()) {
            List<String> tables = new ArrayList<>();
            ResultSet names = statement.executeQuery(
                    "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite%' AND name <> 'schema_history'");
            while (names.next()) {
                tables.add(names.getString(1));
            }
            for (String table : tables) {
                List<String> lines = new ArrayList<>();
                ResultSet row = statement.executeQuery("SELECT * FROM " + table);
                while (row.next()) {
                    StringBuilder line = new StringBuilder();
                    for (int at = 1; at <= row.getMetaData().getColumnCount(); at++) {
                        Object value = row.getObject(at);
                        line.append(value == null ? "nothing" : value.getClass().getSimpleName() + value)
                                .append(" | ");
                    }
                    lines.add(line.toString());
                }
                rows.put(table, lines.stream().sorted().toList());
            }
        }
        return rows;
    }

    private static Map<String, Integer> kept(Path shop) throws IOException {
        Map<String, Integer> kept = new TreeMap<>();
        for (String folder : List.of("photographs", "loggers")) {
            try (Stream<Path> all = Files.list(shop.resolve(folder))) {
                for (Path file : all.toList()) {
                    kept.put(folder + file.getFileName(), java.util.Arrays.hashCode(Files.readAllBytes(file)));
                }
            }
        }
        return kept;
    }

    /** Nothing is fetched: the contexts come out of the archive itself. */
    private static final DocumentLoader FROM_THE_ARCHIVE = (url, options) -> switch (url.toString()) {
        case "https://linked.art/ns/v1/linked-art.json" -> document("data/contexts/linked-art.json");
        case "http://www.w3.org/ns/anno.jsonld" -> document("data/contexts/anno.jsonld");
        case "https://w3id.org/ro/crate/1.2/context" -> document("data/contexts/ro-crate.jsonld");
        default -> throw new JsonLdError(JsonLdErrorCode.LOADING_REMOTE_CONTEXT_FAILED, "not in the archive: " + url);
    };

    private static JsonDocument document(String path) throws JsonLdError {
        return JsonDocument.of(new ByteArrayInputStream(bytes(path)));
    }

    private static byte[] bytes(String path) {
        return java.util.Objects.requireNonNull(files.get(path), path);
    }

    private static List<String> linked() {
        return files.keySet().stream()
                .filter(path -> path.endsWith(".jsonld") || path.endsWith("ro-crate-metadata.json"))
                .filter(path -> !path.contains("/contexts/"))
                .toList();
    }

    private static JsonArray expanded(String path) throws JsonLdError {
        return JsonLd.expand(document(path))
                .loader(FROM_THE_ARCHIVE)
                .base(URI.create("arcp://uuid,00000000-0000-4000-8000-000000000000/"))
                .get();
    }

    /** Expansion drops a member whose name its context does not know; so every value has to be there afterwards. */
    @Test
    void expansionLosesNothing() throws Exception {
        assertThat(linked()).hasSizeGreaterThan(15);
        for (String path : linked()) {
            JsonValue source = document(path).getJsonContent().orElseThrow();
            assertThat(leaves(expanded(path), true))
                    .as(path)
                    .isEqualTo(leaves(source, false))
                    .isPositive();
        }
    }

    /** The check itself sees a loss: a member nobody declared is dropped. */
    @Test
    void aMemberOutsideTheContextWouldBeSeen() throws Exception {
        String text = new String(bytes("data/people/owner-1.jsonld"), java.nio.charset.StandardCharsets.UTF_8)
                .replaceFirst("\\{", "{ \"undeclared\": \"x\",");
        JsonDocument document = JsonDocument.of(new java.io.StringReader(text));
        long after = leaves(JsonLd.expand(document).loader(FROM_THE_ARCHIVE).get(), true);
        assertThat(after).isEqualTo(leaves(document.getJsonContent().orElseThrow(), false) - 1);
    }

    /** Texts, numbers and names in a document, its context and the types put on values apart. */
    private static long leaves(JsonValue value, boolean afterExpansion) {
        if (value instanceof JsonObject object) {
            boolean typedValue = afterExpansion && object.containsKey("@value");
            return object.entrySet().stream()
                    .filter(member -> !member.getKey().equals("@context")
                            && !(typedValue && member.getKey().equals("@type")))
                    .mapToLong(member -> leaves(member.getValue(), afterExpansion))
                    .sum();
        }
        return value instanceof JsonArray array
                ? array.stream().mapToLong(item -> leaves(item, afterExpansion)).sum()
                : 1;
    }

    @Test
    void anInstrumentHasItsShape() throws Exception {
        JsonObject viola = document("data/instruments/1/instrument.jsonld")
                .getJsonContent()
                .orElseThrow()
                .asJsonObject();
        assertThat(viola.getString("type")).isEqualTo("HumanMadeObject");
        assertThat(viola.getString("id")).matches("arcp://uuid,[0-9a-f-]{36}/instruments/1");
        assertThat(viola.getJsonArray("dimension")).hasSizeGreaterThan(10).allSatisfy(item -> {
            JsonObject dimension = item.asJsonObject();
            double value = dimension.getJsonNumber("value").doubleValue();
            assertThat(dimension.getJsonNumber("lower_value_limit").doubleValue())
                    .isLessThan(value);
            assertThat(dimension.getJsonNumber("upper_value_limit").doubleValue())
                    .isGreaterThan(value);
            assertThat(dimension.getJsonObject("unit").getString("_label")).isIn("millimeters", "grams");
            JsonObject act = dimension.getJsonArray("assigned_by").getJsonObject(0);
            assertThat(act.getJsonArray("carried_out_by").getJsonObject(0).getString("type"))
                    .isEqualTo("Person");
            OffsetDateTime.parse(act.getJsonObject("timespan").getString("begin_of_the_begin"));
        });
        assertThat(viola.getJsonArray("attributed_by")).isNotEmpty().allSatisfy(item -> {
            assertThat(item.asJsonObject().getString("assigned_property")).isEqualTo("classified_as");
            assertThat(item.asJsonObject().getJsonArray("assigned")).hasSize(1);
        });
        assertThat(viola.getJsonArray("modified_by")).isNotEmpty();
        assertThat(viola.getJsonArray("representation"))
                .isNotEmpty()
                .allSatisfy(item -> assertThat(files)
                        .containsKey("data/"
                                + item.asJsonObject()
                                        .getJsonArray("digitally_shown_by")
                                        .getJsonObject(0)
                                        .getJsonArray("access_point")
                                        .getJsonObject(0)
                                        .getString("id")
                                        .replaceFirst("arcp://uuid,[^/]*/", "")));
    }

    /** What the CIDOC CRM makes of it: classes and properties by their full names. */
    @Test
    void theTermsAreThoseOfTheModel() throws Exception {
        String text = expanded("data/instruments/1/instrument.jsonld").toString();
        for (String name : List.of(
                "E22_Human-Made_Object",
                "P43_has_dimension",
                "E54_Dimension",
                "P90_has_value",
                "P140i_was_attributed_by",
                "P177_assigned_property_of_type",
                "P31i_was_modified_by",
                "E11_Modification",
                "P52_has_current_owner")) {
            assertThat(text).contains("\"http://www.cidoc-crm.org/cidoc-crm/" + name + "\"");
        }
        assertThat(text).contains("\"http://www.cidoc-crm.org/cidoc-crm/P2_has_type\"}]");
    }

    /** Web Annotation Data Model 3 and 4: what an annotation must have, from memory. */
    @Test
    void annotationsAreValid() throws Exception {
        List<String> pages =
                linked().stream().filter(path -> path.contains("/marks-")).toList();
        assertThat(pages).isNotEmpty();
        for (String path : pages) {
            JsonObject page = document(path).getJsonContent().orElseThrow().asJsonObject();
            assertThat(page.getString("type")).isEqualTo("AnnotationPage");
            assertThat(page.getJsonArray("@context").getString(0)).isEqualTo("http://www.w3.org/ns/anno.jsonld");
            for (JsonValue item : page.getJsonArray("items")) {
                JsonObject annotation = item.asJsonObject();
                assertThat(URI.create(annotation.getString("id")).isAbsolute()).isTrue();
                assertThat(annotation.getString("type")).isEqualTo("Annotation");
                OffsetDateTime.parse(annotation.getString("created"));
                JsonObject target = annotation.getJsonObject("target");
                assertThat(files)
                        .containsKey("data/" + target.getString("source").replaceFirst("arcp://uuid,[^/]*/", ""));
                assertThat(target.getJsonObject("selector").getString("type")).isEqualTo("SvgSelector");
                assertThat(target.getJsonObject("selector").getString("value"))
                        .startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\">");
                assertThat(annotation.getJsonArray("body").getJsonObject(0).getString("type"))
                        .isEqualTo("TextualBody");
            }
        }
    }

    /** RO-Crate 1.2: the descriptor, the root with what it must tell, and an entity for every file of the payload. */
    @Test
    void theCrateNamesEveryFile() throws Exception {
        JsonArray graph = document("data/ro-crate-metadata.json")
                .getJsonContent()
                .orElseThrow()
                .asJsonObject()
                .getJsonArray("@graph");
        Map<String, JsonObject> entities = graph.stream()
                .map(JsonValue::asJsonObject)
                .collect(Collectors.toMap(entity -> entity.getString("@id"), entity -> entity));
        JsonObject descriptor = entity(entities, "ro-crate-metadata.json");
        assertThat(descriptor.getJsonObject("about").getString("@id")).isEqualTo("./");
        assertThat(descriptor.getJsonObject("conformsTo").getString("@id")).isEqualTo("https://w3id.org/ro/crate/1.2");
        JsonObject top = entity(entities, "./");
        assertThat(top).containsKeys("name", "description", "datePublished", "license");
        List<String> parts = top.getJsonArray("hasPart").stream()
                .map(part -> part.asJsonObject().getString("@id"))
                .toList();
        List<String> payload = files.keySet().stream()
                .filter(path -> path.startsWith("data/") && !path.endsWith("ro-crate-metadata.json"))
                .map(path -> path.substring("data/".length()))
                .toList();
        assertThat(parts).containsExactlyInAnyOrderElementsOf(payload);
        for (String part : parts) {
            JsonObject file = entity(entities, part);
            assertThat(file.get("@type")).isEqualTo(jakarta.json.Json.createValue("File"));
            assertThat(file.getString("contentSize")).isEqualTo(Integer.toString(bytes("data/" + part).length));
        }
    }

    private static JsonObject entity(Map<String, JsonObject> entities, String id) {
        return java.util.Objects.requireNonNull(entities.get(id), id);
    }

    @Test
    void noFileIsEmpty() {
        assertThat(files)
                .allSatisfy((path, bytes) -> assertThat(bytes.length).as(path).isPositive());
        assertThat(new String(bytes("data/instruments/1/measures.csv"), java.nio.charset.StandardCharsets.UTF_8)
                        .lines())
                .hasSizeGreaterThan(10);
    }

    @Test
    void thePapersOpen() throws IOException {
        List<String> papers =
                files.keySet().stream().filter(path -> path.endsWith(".pdf")).toList();
        assertThat(papers).hasSizeGreaterThan(15);
        for (String path : papers) {
            try (var pdf = Loader.loadPDF(bytes(path))) {
                assertThat(pdf.getNumberOfPages()).as(path).isPositive();
            }
        }
    }
}
