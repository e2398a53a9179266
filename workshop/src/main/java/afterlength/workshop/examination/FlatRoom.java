package afterlength.workshop.examination;

import afterlength.sight.measure.MeasuredPhoto;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;

/** Rectified pictures, and the page that shows one under a grid. */
public final class FlatRoom implements Room {
    private static final double HIGHEST_MM = 60;

    private final VisitHome home;
    private final MarkGrounds grounds;
    private final CardSearches searches;
    private final FlatPictures pictures;

    public FlatRoom(VisitHome home, MarkGrounds grounds, CardSearches searches, FlatPictures pictures) {
        this.home = home;
        this.grounds = grounds;
        this.searches = searches;
        this.pictures = pictures;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/photographs/{photograph}/flat", this::page);
        routes.get("/photographs/{photograph}/flat.jpg", this::picture);
    }

    private void page(Context context) {
        PhotographGround ground = grounds.photograph(context);
        Photograph photograph = ground.photograph();
        double height_mm = height_mm(context);
        Optional<MeasuredPhoto> photo = searches.findMeasured(photograph);
        Templates.show(
                context,
                new FlatPage(
                        home.frame("From straight above", ground.page(), "Marks"),
                        photograph,
                        photo.map(found -> FlatSheet.of(photograph.id(), found, height_mm))
                                .orElse(null),
                        CardLine.of(photograph, searches.of(photograph))));
    }

    private void picture(Context context) {
        Photograph photograph = grounds.photograph(context).photograph();
        MeasuredPhoto photo = searches.findMeasured(photograph)
                .orElseThrow(() -> new NotHere("card found in the photograph", photograph.id()));
        FlatSheet sheet = FlatSheet.of(photograph.id(), photo, height_mm(context));
        byte[] jpeg = pictures.jpeg(photograph, photo, sheet);
        context.contentType("image/jpeg").header("Cache-Control", "no-cache").result(jpeg);
    }

    /** What is no height counts as the card's own plane. */
    private static double height_mm(Context context) {
        String asked = context.queryParam("height_mm");
        if (asked == null || !asked.matches("\\d{1,2}(\\.\\d{1,3})?")) {
            return 0;
        }
        return Math.min(HIGHEST_MM, Double.parseDouble(asked));
    }
}
