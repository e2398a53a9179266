package afterlength.workshop.agreement;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.instrument.Instrument;

/** The frames of this stage's pages: the workbench leads back to the instrument, everything else to the workbench. */
record VisitFrames(Frames frames) {
    Frame workbench(Proposal proposal) {
        Instrument instrument = proposal.instrument();
        return frames.of("What could be done, visit " + proposal.visit().number())
                .back("/instruments/" + instrument.id(), instrument.name());
    }

    Frame inside(long visitId, String title) {
        return frames.of(title).back(workbench(visitId), "What could be done");
    }

    static String workbench(long visitId) {
        return "/visits/" + visitId + "/agreement";
    }
}
