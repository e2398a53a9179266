package afterlength.sight.camera;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.Point;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The table in src/test/resources/photo/plane_geometry_cases.csv, reckoned elsewhere: pixels of points in three views, lengths
 * between them, and what a length at a height reads (docs/sources.md#photo-study). Pixels are printed to 1e-6, which is 1.5e-7 mm
 * at 7 px/mm; an extrapolation from a card of 63 × 36 mm to 380 mm makes at most 1e-4 mm of it.
 */
class PlaneGeometryPublishedTest {
    private static final double TOLERANCE_MM = 1e-4;
    private static final int WIDTH_PX = 4032;
    private static final int HEIGHT_PX = 3024;

    private static List<CsvRecord> rows(String number) throws IOException {
        try (Reader file = new InputStreamReader(
                        Objects.requireNonNull(PlaneGeometryPublishedTest.class.getResourceAsStream(
                                "/photo/plane_geometry_cases.csv")),
                        StandardCharsets.UTF_8);
                CsvReader<CsvRecord> reader = CsvReader.builder()
                        .commentStrategy(CommentStrategy.SKIP)
                        .ofCsvRecord(file)) {
            return reader.stream().filter(row -> row.getField(0).equals(number)).toList();
        }
    }

    private static List<CsvRecord> rows(String number, String kind) throws IOException {
        return rows(number).stream()
                .filter(row -> row.getField(7).startsWith(kind))
                .toList();
    }

    private static double number(CsvRecord row, int field) {
        return Double.parseDouble(row.getField(field));
    }

    private static Point place(CsvRecord row) {
        return Point.of(number(row, 9), number(row, 10));
    }

    /** The table counts from the centre of the first pixel. */
    private static Pixel pixel(CsvRecord row) {
        return new Pixel(number(row, 11) + 0.5, number(row, 12) + 0.5);
    }

    /** The lens as printed; the pose from the eight points of the card. */
    private static View view(String number) throws IOException {
        List<CsvRecord> card = rows(number, "card");
        double focal_px = number(card.get(0), 1);
        double k1 = number(card.get(0), 2);
        double sure = 1e-9;
        LensGuess known = new LensGuess(
                new Guess(Math.log(focal_px), sure),
                new Guess(k1, sure),
                new Guess(WIDTH_PX / 2.0, sure),
                new Guess(HEIGHT_PX / 2.0, sure));
        List<Sighting> sightings =
                card.stream().map(row -> new Sighting(place(row), pixel(row))).toList();
        return ViewFit.of(sightings, known).view();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "1", "2"})
    void everyPointLiesWhereTheTableHasIt(String number) throws IOException {
        View view = view(number);
        List<CsvRecord> ends = rows(number, "segment");
        assertThat(ends).hasSize(14);
        for (CsvRecord end : ends) {
            assertThat(view.place(pixel(end), 0).distanceTo_mm(place(end)))
                    .as(end.getFields().toString())
                    .isLessThan(TOLERANCE_MM);
            assertThat(view.pixel(place(end), 0).distanceTo(pixel(end))).isLessThan(1e-3);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "1", "2"})
    void theCameraStandsWhereTheTableHasIt(String number) throws IOException {
        View view = view(number);
        CsvRecord height = rows(number, "height").get(0);
        assertThat(view.tilt_deg()).isCloseTo(number(height, 3), within(1e-3));
        double cameraHeight_mm = Double.parseDouble(height.getField(11).replace("Z=", ""));
        assertThat(view.cameraHeight_mm()).isCloseTo(cameraHeight_mm, within(1e-3));
    }

    /** A bar of 100 mm at a height, read as if it lay in the plane of the card. */
    @ParameterizedTest
    @ValueSource(strings = {"0", "1", "2"})
    void aHeightReadsAsLongAsTheTableHasIt(String number) throws IOException {
        View view = view(number);
        for (CsvRecord row : rows(number, "height")) {
            double height_mm = Double.parseDouble(row.getField(7).replace("height ", ""));
            Pixel from = view.pixel(Point.of(-20, 30), height_mm);
            Pixel to = view.pixel(Point.of(60, 90), height_mm);
            double read_mm = view.place(from, 0).distanceTo_mm(view.place(to, 0));
            assertThat(read_mm).isCloseTo(number(row, 10), within(1e-3));
            assertThat(view.place(from, height_mm).distanceTo_mm(view.place(to, height_mm)))
                    .isCloseTo(100, within(TOLERANCE_MM));
        }
    }
}
