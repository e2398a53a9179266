package afterlength.workshop.retouch;

import afterlength.craft.colour.ColourClass;
import afterlength.craft.colour.Drawdown;
import afterlength.craft.colour.KubelkaMunk;
import afterlength.craft.colour.Saunderson;
import afterlength.craft.colour.Spectrum;
import afterlength.sight.camera.Pixel;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.examination.Answer;
import afterlength.workshop.examination.CalibratedCameraStore;
import afterlength.workshop.examination.CardPrintStore;
import afterlength.workshop.examination.CardSearches;
import afterlength.workshop.examination.DrawnMark;
import afterlength.workshop.examination.Finding;
import afterlength.workshop.examination.FindingAge;
import afterlength.workshop.examination.FindingStore;
import afterlength.workshop.examination.MarkStore;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.examination.Photograph;
import afterlength.workshop.examination.PhotographStore;
import afterlength.workshop.instrument.Arrival;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentKind;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.Photographs;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.work.DiaryStore;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;

/** A real shop with one visit, one finding and colours that nobody ever mixed. */
final class RetouchShop {
    static final Instant NOW = Instant.parse("2026-11-04T13:15:00Z");

    final Ledger ledger;
    final PaletteStore palette;
    final RetouchStore retouches;
    final CoatStore coats;
    final DiaryStore diary;
    final VarnishStore book;
    final WornAreaStore areas;
    final FindingStore findings;
    final MendedLineStore lines;
    final MarkStore marks;
    final PhotographStore photographs;
    final Photographs originals;
    final CardSearches searches;
    final SettingsStore settings;
    final VisitStore visits;
    final Visit visit;
    final long finding;

    DryingAir air = DryingAir.NOT_LOGGED;

    RetouchShop(Path folder) {
        ShopFolder shop = ShopFolder.open(folder);
        ledger = Ledger.open(shop);
        lines = new MendedLineStore(ledger);
        marks = new MarkStore(ledger);
        photographs = new PhotographStore(ledger);
        originals = new Photographs(shop);
        searches = new CardSearches(originals, new CardPrintStore(ledger), new CalibratedCameraStore(ledger));
        palette = new PaletteStore(ledger);
        retouches = new RetouchStore(ledger);
        coats = new CoatStore(ledger);
        diary = new DiaryStore(ledger);
        book = new VarnishStore(ledger);
        areas = new WornAreaStore(ledger);
        findings = new FindingStore(ledger);
        settings = new SettingsStore(ledger);
        visits = new VisitStore(ledger);
        visit = visits.receive(new Arrival(
                new Owner(0, "Ilse Tamm", "", "", "", "", 1),
                new Instrument(0, 0, InstrumentKind.VIOLA, "Viola", "", "", "", "", null, "", "", null, 1),
                new Visit(0, 0, "", LocalDate.of(2026, 11, 2), "", "worn edge", "", "", "", null, null, 1)));
        finding = findings.add(wornEdge(), List.of());
    }

    private Finding wornEdge() {
        return new Finding(
                0,
                visit.id(),
                null,
                false,
                "varnish",
                "varnish wear",
                "upper edge",
                58.0,
                2.0,
                "",
                FindingAge.OLD,
                Answer.NO,
                Answer.YES,
                "bare",
                "",
                NOW,
                "bench",
                NOW);
    }

    OpenedDesk open() {
        Clock clock = Clock.fixed(NOW, ZoneOffset.UTC);
        Frames frames = new Frames(settings);
        InstrumentStore instruments = new InstrumentStore(ledger);
        return OpenedDesk.with(
                new PalettePages(frames, settings, palette, clock),
                new RetouchPages(frames, settings, instruments, visits, findings, palette, retouches, coats, clock),
                new MendedLinePages(
                        frames,
                        settings,
                        instruments,
                        visits,
                        marks,
                        new LineDesk(photographs, originals, searches),
                        lines,
                        clock),
                new VarnishPages(frames, settings, book, air, clock),
                new WornAreaPages(frames, settings, instruments, visits, findings, book, areas, air, clock));
    }

    /** A photograph with a line marked on it, its card looked for. */
    DrawnMark marked(byte[] png, Moment moment, Pixel... points) throws IOException {
        String sha256 = originals.keep(new ByteArrayInputStream(png));
        BufferedImage size = ImageIO.read(new ByteArrayInputStream(png));
        long photograph = photographs
                .findSame(visit.id(), sha256)
                .map(Photograph::id)
                .orElseGet(() -> photographs.add(new Photograph(
                        0,
                        visit.id(),
                        sha256,
                        "image/png",
                        size.getWidth(),
                        size.getHeight(),
                        moment,
                        "top",
                        "",
                        NOW,
                        false)));
        long mark = marks.addCrack(visit.id(), photograph, finding, List.of(points), "bench", NOW);
        while (searches.working(photographs.get(photograph))) {
            Thread.onSpinWait();
        }
        return marks.get(mark);
    }

    PaletteColour keep(String name, double middle_nm, double width_nm, double scatter) {
        return palette.add(colour(name, middle_nm, width_nm, scatter), NOW);
    }

    static NewColour colour(String name, double middle_nm, double width_nm, double scatter) {
        List<Drawdown> films = new ArrayList<>();
        for (double card : new double[] {0.86, 0.03}) {
            for (double coats : new double[] {0.5, 1}) {
                films.add(new Drawdown(
                        coats,
                        Spectrum.even(PaletteGrid.WAVELENGTHS, card),
                        film(middle_nm, width_nm, scatter, coats, card)));
            }
        }
        return new NewColour(name, "spirit varnish", "alcohol", ColourClass.INSTRUMENT, true, films, "bench");
    }

    static Spectrum film(double middle_nm, double width_nm, double scatter, double coats, double card) {
        double[] seen = new double[PaletteGrid.WAVELENGTHS.count()];
        for (int n = 0; n < seen.length; n++) {
            double k = 0.06 + 1.8 / (1 + Math.exp((400 + 10 * n - middle_nm) / width_nm));
            seen[n] = Saunderson.VARNISH.measured(
                    KubelkaMunk.overGround(k, scatter, coats, Saunderson.VARNISH.inner(card)));
        }
        return Spectrum.of(PaletteGrid.WAVELENGTHS, seen);
    }

    /** As an instrument writes it: a heading and one line a sample. */
    static String file(String... namesAndValues) {
        StringBuilder file = new StringBuilder("name,")
                .append(IntStream.range(0, 31)
                        .mapToObj(n -> "" + (400 + 10 * n))
                        .collect(Collectors.joining(",")))
                .append('\n');
        for (String line : namesAndValues) {
            file.append(line).append('\n');
        }
        return file.toString();
    }

    static String line(String name, Spectrum colour) {
        return name + ","
                + java.util.Arrays.stream(colour.values())
                        .mapToObj(Double::toString)
                        .collect(Collectors.joining(","));
    }
}
