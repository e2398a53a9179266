package afterlength.workshop.archive;

import afterlength.sight.picture.PictureFile;
import afterlength.workshop.examination.Answer;
import afterlength.workshop.examination.Finding;
import afterlength.workshop.examination.FindingAge;
import afterlength.workshop.examination.FindingStore;
import afterlength.workshop.examination.Measure;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.examination.Photograph;
import afterlength.workshop.examination.PhotographIntake;
import afterlength.workshop.examination.PhotographStore;
import afterlength.workshop.examination.PhotographWords;
import afterlength.workshop.examination.SmallPictures;
import afterlength.workshop.examination.Taken;
import afterlength.workshop.instrument.Arrival;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentKind;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.Photographs;
import afterlength.workshop.ledger.ShopFolder;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;

/** A real shop in a folder: two owners, two instruments, findings, measures, and pictures with the place noted in them. */
public final class SmallShop {
    public static final Instant NOW = Instant.parse("2026-03-02T09:15:00Z");
    public static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);
    static final String HARD_WORDS = "\\N \"quoted\", \\\\ back\r\nsecond line 提琴🎻 ";

    public final ShopFolder folder;
    public final Ledger ledger;
    public final Visit viola;
    public final Visit cello;

    public SmallShop(Path root) throws IOException {
        folder = ShopFolder.open(root);
        ledger = Ledger.open(folder);
        viola = receive("Clementine Vantongeren", "Viola", InstrumentKind.VIOLA, "+44 7700 900123", "1 Larkrise Lane");
        cello = receive("Balthasar Quirrenbach", "Cello", InstrumentKind.CELLO, "+44 7700 900456", "2 Millrace Yard");
        fill(viola, "Clementine Vantongeren");
        fill(cello, "Balthasar Quirrenbach");
    }

    private Visit receive(String owner, String instrument, InstrumentKind kind, String phone, String street) {
        String mail = owner.toLowerCase(java.util.Locale.ROOT).replace(' ', '.') + "@example.org";
        return new VisitStore(ledger)
                .receive(new Arrival(
                        new Owner(0, owner, mail, phone, street + "\nUpper Aldern", "", 1),
                        new Instrument(0, 0, kind, instrument, "", HARD_WORDS, "none", "", 1.0 / 3, "", "", null, 1),
                        new Visit(
                                0,
                                0,
                                "",
                                LocalDate.of(2026, 3, 2),
                                owner,
                                "Crack in the top",
                                "as " + owner + " said",
                                "case",
                                "\\N",
                                null,
                                LocalDate.of(2026, 4, 1),
                                1)));
    }

    private void fill(Visit visit, String owner) throws IOException {
        MeasureStore measures = new MeasureStore(ledger);
        long first = measures.add(measure(visit, null, 405.0));
        measures.correct(measure(visit, first, Math.nextUp(405.5)));
        Photograph picture = take(visit, picture((int) visit.id(), owner));
        new FindingStore(ledger).add(finding(visit), List.of(picture.id()));
    }

    private Photograph take(Visit visit, byte[] bytes) {
        Photographs originals = new Photographs(folder);
        PhotographIntake intake = new PhotographIntake(
                new PhotographStore(ledger), originals, new SmallPictures(folder, originals), CLOCK);
        Taken taken = intake.take(
                visit.id(), new PictureFile("a.jpg", bytes), new PhotographWords(Moment.BEFORE, "front", "as it came"));
        return ((Taken.Kept) taken).photograph();
    }

    private static Measure measure(Visit visit, @Nullable Long replaces, double value) {
        return new Measure(
                0,
                visit.id(),
                replaces,
                false,
                Moment.BEFORE,
                "BODY_LENGTH",
                value,
                "mm",
                0.1,
                "tape",
                20.0,
                45.0,
                NOW,
                "M",
                NOW);
    }

    private static Finding finding(Visit visit) {
        return new Finding(
                0,
                visit.id(),
                null,
                false,
                "top",
                "wing crack",
                "bass side",
                42.0,
                0.5,
                "",
                FindingAge.OLD,
                Answer.YES,
                Answer.NO,
                HARD_WORDS,
                "",
                NOW,
                "M. Muster",
                NOW);
    }

    /** A picture that its camera, by a note, took at 48° 8' north, with a comment that names somebody. */
    private static byte[] picture(int colour, String owner) throws IOException {
        BufferedImage image = new BufferedImage(80, 60, BufferedImage.TYPE_INT_RGB);
        image.setRGB(5, 5, 0xFF0000 + colour * 40);
        image.setRGB(40, 30, colour * 0x305070);
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        ImageIO.write(image, "jpg", jpeg);
        ByteBuffer tiff = ByteBuffer.allocate(92);
        tiff.put("MM\0*".getBytes(StandardCharsets.ISO_8859_1)).putInt(8).putShort((short) 2);
        entry(tiff, 0x0112, 3, 1, 1 << 16);
        entry(tiff, 0x8825, 4, 1, 38);
        tiff.putInt(0).putShort((short) 2);
        entry(tiff, 1, 2, 2, 'N' << 24);
        entry(tiff, 2, 5, 3, 68);
        tiff.putInt(0).putInt(48).putInt(1).putInt(8).putInt(1).putInt(0).putInt(1);
        byte[] comment = ("at the house of " + owner).getBytes(StandardCharsets.ISO_8859_1);
        ByteBuffer with = ByteBuffer.allocate(jpeg.size() + 102 + 4 + comment.length);
        with.put(jpeg.toByteArray(), 0, 2).putShort((short) 0xFFE1).putShort((short) 100);
        with.put("Exif\0\0".getBytes(StandardCharsets.ISO_8859_1)).put(tiff.array());
        with.putShort((short) 0xFFFE).putShort((short) (2 + comment.length)).put(comment);
        return with.put(jpeg.toByteArray(), 2, jpeg.size() - 2).array();
    }

    private static void entry(ByteBuffer tiff, int tag, int kind, int count, int value) {
        tiff.putShort((short) tag).putShort((short) kind).putInt(count).putInt(value);
    }

    ShopAtHand atHand() {
        return atHand(folder, ledger);
    }

    static ShopAtHand atHand(ShopFolder folder, Ledger ledger) {
        return new ShopAtHand(
                folder,
                ledger,
                visit -> Map.of("report.pdf", ("paper of " + visit.number()).getBytes(StandardCharsets.UTF_8)));
    }

    public ArchiveMaker maker() {
        return new ArchiveMaker(atHand(), copy -> atHand(copy, Ledger.open(copy)), CLOCK, "Afterlength test");
    }

    Path archive(ArchiveWish wish, Path file) throws IOException {
        maker().write(wish, file, Progress.NOBODY);
        return file;
    }
}
