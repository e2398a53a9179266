package afterlength.workshop.examination;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.InstrumentView;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.instrument.Visit;
import io.javalin.http.Context;

/** Finds what an address, or a mark, is drawn on. */
public final class MarkGrounds {
    private final VisitHome home;
    private final PhotographStore photographs;

    public MarkGrounds(VisitHome home, PhotographStore photographs) {
        this.home = home;
        this.photographs = photographs;
    }

    PhotographGround photograph(Context context) {
        return new PhotographGround(photographs.get(Addresses.id(context, "photograph")));
    }

    DrawingGround drawing(Context context) {
        Visit visit = home.visit(context);
        String word = context.pathParam("view");
        InstrumentView view = DrawingGround.find(word);
        if (view == null) {
            throw new NotHere("drawing", word);
        }
        return DrawingGround.of(visit.id(), home.instrument(visit), view);
    }

    MarkGround of(DrawnMark mark) {
        Long photographId = mark.photographId();
        InstrumentView view = mark.drawing();
        if (photographId != null) {
            return new PhotographGround(photographs.get(photographId));
        }
        if (view == null) {
            throw new IllegalStateException("mark " + mark.id() + " is on nothing");
        }
        return DrawingGround.of(mark.visitId(), home.instrument(home.visit(mark.visitId())), view);
    }
}
