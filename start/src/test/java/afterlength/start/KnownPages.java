package afterlength.start;

import java.util.Set;
import java.util.stream.Collectors;

/**
 * The kinds of page that links lead to in the demonstration shop, numbers left out. A walk that reaches fewer has lost its way; a page
 * that comes new is walked at once and entered here with it.
 */
final class KnownPages {
    static final Set<String> ALL = """
            /
            /diary/#/correct
            /findings/#/correct
            /instruments
            /instruments/#
            /instruments/#/edit
            /instruments/#/receive
            /invoices/#
            /measures/#/correct
            /owners/#/data
            /owners/#/edit
            /photographs/#/flat
            /photographs/#/marks
            /photographs/#/words
            /plan
            /plan/absences/new
            /plan/again
            /plan/steps/#
            /plan/visits/#
            /plan/what-if
            /receive
            /shelf
            /shelf/archive
            /shelf/backups
            /shelf/bench
            /shelf/clamps
            /shelf/clamps/#
            /shelf/climate
            /shelf/climate/files/#
            /shelf/climate/wood
            /shelf/glue
            /shelf/glue/#
            /shelf/glue/new
            /shelf/glue/window
            /shelf/invoices
            /shelf/materials/#
            /shelf/materials/new
            /shelf/palette
            /shelf/palette/#
            /shelf/palette/import
            /shelf/palette/new
            /shelf/settings
            /shelf/tablets
            /shelf/times
            /shelf/times/-/#
            /shelf/varnish
            /shelf/varnish/#
            /shelf/varnish/new
            /sources
            /steps/#/change
            /treatments/#/edit
            /visits/#/access/#
            /visits/#/advice/#
            /visits/#/agreement
            /visits/#/drawings/back
            /visits/#/drawings/front
            /visits/#/drawings/scroll
            /visits/#/drawings/side
            /visits/#/examination
            /visits/#/handover
            /visits/#/invoice
            /visits/#/last-chance
            /visits/#/measures
            /visits/#/mended-lines
            /visits/#/mended-lines/#
            /visits/#/photographs
            /visits/#/receipt
            /visits/#/retouch/#
            /visits/#/retouch/new
            /visits/#/sittings
            /visits/#/steps/new
            /visits/#/story
            /visits/#/treatments
            /visits/#/treatments/own
            /visits/#/work
            /visits/#/worn-areas
            """.lines().collect(Collectors.toUnmodifiableSet());

    private KnownPages() {}
}
