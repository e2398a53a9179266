package afterlength.workshop.setup;

/** Where the bow has the least room for each of the usual distances and forces. */
record SurveyPart(MapPart map) {}
