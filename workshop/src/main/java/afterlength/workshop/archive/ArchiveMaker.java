package afterlength.workshop.archive;

import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.ledger.FreshShop;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * Makes an archive: one ZIP that is a bag (RFC 8493), whose payload is a research object crate with the record in open formats, and
 * the rows of every table, from which the same shop comes back ({@link ArchiveReading}). The ZIP is written beside its place and moved
 * there when it is whole.
 */
public final class ArchiveMaker {
    static final String FORMAT = "1";
    static final String FORMAT_FACT = "Afterlength-Archive-Format";
    static final String VERSION_FACT = "Afterlength-Database-Version";
    static final String HOLDS_FACT = "Afterlength-Holds";

    private final ShopAtHand shop;
    private final ShopAtHand.Opener opener;
    private final Clock clock;
    private final String program;

    /**
     * @param opener opens the copy of the shop that is archived
     * @param program its name and version, as every archive tells
     */
    public ArchiveMaker(ShopAtHand shop, ShopAtHand.Opener opener, Clock clock, String program) {
        this.shop = shop;
        this.opener = opener;
        this.clock = clock;
        this.program = program;
    }

    /** The name an archive of today is filed by. */
    public String fileName(ArchiveWish wish) {
        String what = wish.findTable().map(table -> table + "-" + wish.id()).orElse("shop");
        return "afterlength-" + what + "-" + LocalDate.now(clock) + ".zip";
    }

    /** Writes the archive to a file, which is replaced. */
    public void write(ArchiveWish wish, Path file, Progress progress) throws IOException {
        checkThere(wish);
        UUID number = ArchiveNumber.of(shop.ledger());
        Path target = file.toAbsolutePath();
        Path part = Files.createTempFile(target.getParent(), "archive-", ".part");
        try (ShopCopy copy = ShopCopy.of(shop, wish, progress)) {
            try (OutputStream out = Files.newOutputStream(part);
                    BagWriter bag = new BagWriter(out, folderName(file), now())) {
                fill(bag, copy, wish, new Ids(number), progress);
            }
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** An archive of nothing would look like one of something. */
    private void checkThere(ArchiveWish wish) {
        String table = wish.findTable().orElse("");
        if (table.equals("owner")) {
            new OwnerStore(shop.ledger()).get(wish.id());
        } else if (!table.isEmpty()) {
            new InstrumentStore(shop.ledger()).get(wish.id());
        }
    }

    private void fill(BagWriter bag, ShopCopy copy, ArchiveWish wish, Ids ids, Progress progress) throws IOException {
        try (ShopAtHand archived = opener.open(copy.folder())) {
            fill(bag, archived, copy.leftOut(), wish, ids, progress);
        }
    }

    private void fill(
            BagWriter bag, ShopAtHand archived, List<String> leftOut, ArchiveWish wish, Ids ids, Progress progress)
            throws IOException {
        Contents contents = new Contents(archived, ids, bag, progress);
        contents.add(ReadMeFirst.text(program, wish, LocalDate.now(clock), leftOut));
        bag.add(Crate.FILE, new Crate(contents.settings(), wish, LocalDate.now(clock), program).text(bag.payload()));
        bag.finish(facts(wish, contents.settings().shopName(), ids));
    }

    private Map<String, String> facts(ArchiveWish wish, String shopName, Ids ids) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("Source-Organization", shopName);
        facts.put("Bagging-Date", LocalDate.now(clock).toString());
        facts.put("Bag-Software-Agent", program);
        facts.put("External-Identifier", ids.base());
        facts.put("External-Description", "Restoration records of bowed string instruments: " + wish.words());
        facts.put(HOLDS_FACT, wish.words());
        facts.put(FORMAT_FACT, FORMAT);
        facts.put(VERSION_FACT, Integer.toString(FreshShop.newestVersion()));
        return facts;
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }

    private static String folderName(Path file) {
        String name = String.valueOf(file.getFileName()).replaceFirst("\\.zip$", "");
        return name.replaceAll("[^A-Za-z0-9._-]", "-");
    }
}
