package afterlength.workshop.instrument;

import gg.jte.Content;

/** What one stage tells about a visit on the instrument's page. Later stages write theirs; the page puts them in order. */
public interface Chapter {
    /** Its name in the margin: "Examination". */
    String name();

    Content about(Visit visit);
}
