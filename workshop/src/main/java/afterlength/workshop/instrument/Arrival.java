package afterlength.workshop.instrument;

/** An instrument's first coming: who brings it, what it is, why. Ids of what is not yet in the shop are 0. */
public record Arrival(Owner owner, Instrument instrument, Visit visit) {

    Instrument instrumentOf(long ownerId) {
        return new Instrument(
                0,
                ownerId,
                instrument.kind(),
                instrument.name(),
                instrument.sizeWords(),
                instrument.madeWords(),
                instrument.labelWords(),
                instrument.marksWords(),
                instrument.bodyLengthMm(),
                instrument.storyTold(),
                instrument.storyDocumented(),
                instrument.unplayedSince(),
                1);
    }

    Visit visitOf(long instrumentId) {
        return new Visit(
                0,
                instrumentId,
                "",
                visit.receivedOn(),
                visit.broughtBy(),
                visit.reason(),
                visit.wish(),
                visit.accessories(),
                visit.conditionWords(),
                visit.insuredValueMinor(),
                visit.promisedOn(),
                1);
    }
}
