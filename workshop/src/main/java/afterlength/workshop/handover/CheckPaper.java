package afterlength.workshop.handover;

import afterlength.workshop.ledger.Settings;

/** The sheet of a check: to be filled in at the bench, or filled in. */
record CheckPaper(Settings shop, YearCheck check) {}
