package afterlength.workshop.instrument;

import afterlength.workshop.desk.Frame;

record InstrumentsPage(Frame frame, String asked, Found found) {}
