package afterlength.workshop.retouch;

import afterlength.craft.colour.Spectrum;

/** One sample of an instrument's file, as it is called there. */
record InstrumentReading(String name, Spectrum spectrum) {}
