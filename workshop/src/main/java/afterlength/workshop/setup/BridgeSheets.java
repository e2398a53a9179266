package afterlength.workshop.setup;

import afterlength.workshop.instrument.Visit;

public interface BridgeSheets {
    byte[] get(Visit visit, SetupMoment moment);
}
