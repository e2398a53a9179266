package afterlength.workshop.archive;

import afterlength.sight.picture.FileKind;
import afterlength.workshop.examination.ArchivedMarks;
import afterlength.workshop.examination.FindingStore;
import afterlength.workshop.examination.MarkStore;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.examination.Photograph;
import afterlength.workshop.examination.PhotographStore;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Listing;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.SettingsStore;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Fills the payload of an archive from a shop, in the order in which a person would look at it. */
final class Contents {
    static final String TABLES = "tables/";
    static final String PHOTOGRAPHS = "photographs/";
    static final String LOGGERS = "loggers/";
    private static final String CONTEXTS = "contexts/";

    private final ShopAtHand shop;
    private final Ids ids;
    private final BagWriter bag;
    private final Progress progress;
    private final InstrumentStore instruments;
    private final OwnerStore owners;
    private final VisitStore visits;
    private final InstrumentRecord record;
    private final ArchivedMarks marks;
    private final MeasuresFile measures;

    Contents(ShopAtHand shop, Ids ids, BagWriter bag, Progress progress) {
        this.shop = shop;
        this.ids = ids;
        this.bag = bag;
        this.progress = progress;
        instruments = new InstrumentStore(shop.ledger());
        owners = new OwnerStore(shop.ledger());
        visits = new VisitStore(shop.ledger());
        PhotographStore photographs = new PhotographStore(shop.ledger());
        record = new InstrumentRecord(ids, shop.ledger(), Contents::pathOf);
        marks = new ArchivedMarks(new FindingStore(shop.ledger()), new MarkStore(shop.ledger()), photographs);
        measures = new MeasuresFile(new MeasureStore(shop.ledger()));
    }

    Settings settings() {
        return new SettingsStore(shop.ledger()).get();
    }

    void add(String readMe) throws IOException {
        bag.add("READ-ME-FIRST.txt", readMe);
        addInstruments();
        addPeople();
        addFiles(shop.folder().photographs(), PHOTOGRAPHS);
        addFiles(shop.folder().loggers(), LOGGERS);
        addTables();
        for (String context : List.of("linked-art.json", "anno.jsonld", "ro-crate.jsonld")) {
            bag.add(CONTEXTS + context, bundled(context));
        }
    }

    private void addInstruments() throws IOException {
        List<Long> all = instruments.find("").stream().map(Listing::id).sorted().toList();
        int done = 0;
        for (long id : all) {
            addInstrument(instruments.get(id));
            progress.told("Instruments written, with their papers", ++done, all.size());
        }
    }

    private void addInstrument(Instrument instrument) throws IOException {
        Owner owner = owners.get(instrument.ownerId());
        List<Visit> stays = new ArrayList<>(visits.listOf(instrument.id()));
        stays.sort(Comparator.comparing(Visit::id));
        String folder = "instruments/" + instrument.id() + "/";
        bag.add(folder + "instrument.jsonld", Json.text(record.object(instrument, owner, stays)));
        bag.add(folder + "measures.csv", measures.of(stays));
        for (Visit visit : stays) {
            addVisit(folder + "visit-" + visit.number() + "/", instrument, owner, visit);
        }
    }

    private void addVisit(String folder, Instrument instrument, Owner owner, Visit visit) throws IOException {
        bag.add(
                folder + "custody.jsonld",
                Json.text(record.custody(instrument, owner, visit, settings().shopName())));
        Map<String, String> drawn = marks.of(
                visit.id(),
                instrument,
                ids.base().replaceFirst("/$", ""),
                ids.of(folder),
                photograph -> ids.of(pathOf(photograph)));
        for (Map.Entry<String, String> file : drawn.entrySet()) {
            bag.add(folder + file.getKey(), file.getValue());
        }
        for (Map.Entry<String, byte[]> paper : shop.papers().of(visit).entrySet()) {
            bag.add(folder + paper.getKey(), paper.getValue());
        }
    }

    private void addPeople() throws IOException {
        PeopleRecord people = new PeopleRecord(ids);
        for (Owner owner : owners.list()) {
            bag.add("people/owner-" + owner.id() + ".jsonld", Json.text(people.person(owner)));
            bag.add("people/owner-" + owner.id() + ".vcf", people.card(owner));
        }
    }

    private void addFiles(Path folder, String under) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(file -> file.getFileName().toString().matches("[0-9a-f]{64}"))
                    .sorted()
                    .toList();
        }
        int done = 0;
        for (Path file : files) {
            bag.add(under + file.getFileName() + ending(file, under), out -> Files.copy(file, out));
            progress.told("Files of " + under.replace("/", "") + " packed", ++done, files.size());
        }
    }

    private static String ending(Path file, String under) throws IOException {
        if (under.equals(LOGGERS)) {
            return ".csv";
        }
        try (InputStream in = Files.newInputStream(file)) {
            FileKind kind = FileKind.of(in.readNBytes(64));
            return kind == FileKind.PNG ? ".png" : ".jpg";
        }
    }

    private void addTables() throws IOException {
        shop.ledger().rows(rows -> {
            int done = 0;
            for (String table : rows.tables()) {
                bag.add(TABLES + table + ".csv", out -> rows.writeTo(table, out));
                progress.told("Tables written", ++done, rows.tables().size());
            }
            return true;
        });
    }

    static String pathOf(Photograph photograph) {
        return PHOTOGRAPHS + photograph.sha256() + (photograph.mediaType().equals("image/png") ? ".png" : ".jpg");
    }

    private static byte[] bundled(String name) throws IOException {
        try (InputStream in = Contents.class.getResourceAsStream("contexts/" + name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            return in.readAllBytes();
        }
    }
}
