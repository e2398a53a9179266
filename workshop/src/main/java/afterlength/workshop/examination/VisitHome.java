package afterlength.workshop.examination;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import io.javalin.http.Context;

/** The visit that a page belongs to, and the way back from it. */
public final class VisitHome {
    private final Frames frames;
    private final VisitStore visits;
    private final InstrumentStore instruments;

    public VisitHome(Frames frames, VisitStore visits, InstrumentStore instruments) {
        this.frames = frames;
        this.visits = visits;
        this.instruments = instruments;
    }

    /** The visit in the address. */
    Visit visit(Context context) {
        return visits.get(Addresses.id(context, "visit"));
    }

    Visit visit(long id) {
        return visits.get(id);
    }

    Instrument instrument(Visit visit) {
        return instruments.get(visit.instrumentId());
    }

    /** A page that leads back to the instrument. */
    Frame frame(Visit visit, String title) {
        Instrument instrument = instrument(visit);
        return frames.of(title).back("/instruments/" + instrument.id(), instrument.name());
    }

    /** A page that leads back to another page of this stage. */
    Frame frame(String title, String backTo, String backWords) {
        return frames.of(title).back(backTo, backWords);
    }
}
