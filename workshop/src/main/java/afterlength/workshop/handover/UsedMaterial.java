package afterlength.workshop.handover;

/** A material that stays in or on the instrument, and what takes it out again. */
record UsedMaterial(String words, String reversibleWith) {}
