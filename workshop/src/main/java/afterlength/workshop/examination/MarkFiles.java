package afterlength.workshop.examination;

import afterlength.craft.geometry.Point;
import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Marks as files: all of a picture as W3C Web Annotations, and the points of one as CSV or JSON, in millimetres on the axes of the
 * card (x right, y down) when the picture is measured and in pixels when it is not. Which of the two stands in the file itself.
 */
public final class MarkFiles implements Room {
    private final MarkGrounds grounds;
    private final MarkStore marks;
    private final MarkBook book;

    public MarkFiles(MarkGrounds grounds, MarkStore marks, FindingStore findings, CardSearches searches) {
        this.grounds = grounds;
        this.marks = marks;
        book = new MarkBook(marks, findings, searches);
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get(
                "/photographs/{photograph}/marks.jsonld", context -> annotations(context, grounds.photograph(context)));
        routes.get(
                "/visits/{visit}/drawings/{view}/marks.jsonld",
                context -> annotations(context, grounds.drawing(context)));
        routes.get(
                "/visits/{visit}/drawings/{view}/picture.svg",
                context -> context.contentType("image/svg+xml")
                        .header("Cache-Control", "no-cache")
                        .result(utf8(grounds.drawing(context).svg())));
        routes.get("/marks/{mark}/points.csv", context -> points(context, "text/csv; charset=utf-8", true));
        routes.get("/marks/{mark}/crown.txt", this::crown);
        routes.get("/marks/{mark}/points.json", context -> points(context, "application/json", false));
    }

    private void annotations(Context context, MarkGround ground) {
        context.contentType("application/ld+json; profile=\"http://www.w3.org/ns/anno.jsonld\"")
                .header("Cache-Control", "no-cache")
                .result(utf8(new MarkAnnotations("http://" + context.host(), ground).text(book.list(ground))));
    }

    /** Neither kind of file names its characters in its header; both are UTF-8 by their standards. */
    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private void points(Context context, String mediaType, boolean asCsv) {
        DrawnMark mark = marks.get(Addresses.id(context, "mark"));
        Optional<List<Point>> places_mm =
                book.findMeasured(grounds.of(mark)).flatMap(photo -> MarkPlaces.find(photo, mark));
        List<Point> points = places_mm.orElseGet(
                () -> mark.points().stream().map(at -> Point.of(at.x(), at.y())).toList());
        String unit = places_mm.isPresent() ? "mm" : mark.photographId() == null ? "drawing" : "px";
        context.contentType(mediaType)
                .header("Cache-Control", "no-cache")
                .result(asCsv ? csv(points, unit) : json(mark, points, unit));
    }

    /** Only millimetres make a crown. */
    private void crown(Context context) {
        DrawnMark mark = marks.get(Addresses.id(context, "mark"));
        List<Point> places = book.findMeasured(grounds.of(mark))
                .flatMap(photo -> MarkPlaces.find(photo, mark))
                .orElseThrow(() -> new NotHere("measured crown of mark", mark.id()));
        context.contentType("text/plain; charset=utf-8")
                .header("Cache-Control", "no-cache")
                .result(CrownPoints.text(places));
    }

    private static String csv(List<Point> points, String unit) {
        return "x_" + unit + ",y_" + unit + "\r\n"
                + points.stream()
                        .map(at -> number(at.x_mm()) + "," + number(at.y_mm()) + "\r\n")
                        .collect(Collectors.joining());
    }

    private static String json(DrawnMark mark, List<Point> points, String unit) {
        String pairs = points.stream()
                .map(at -> "[" + number(at.x_mm()) + "," + number(at.y_mm()) + "]")
                .collect(Collectors.joining(","));
        return "{\"mark\":" + mark.id() + ",\"kind\":\"" + mark.tool().kind().word() + "\",\"unit\":\"" + unit
                + "\",\"points\":[" + pairs + "]}";
    }

    private static String number(double value) {
        return Figures.typed(Math.round(value * 1000) / 1000.0);
    }
}
