package afterlength.workshop.archive;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;

/**
 * Making and reading archives.
 *
 * @param asked the words by which instruments and people were looked for, or empty
 * @param choices what an archive can be made of, as a select has it
 * @param cut whether there are more than the choices hold
 * @param beside the folder in which new shops are made
 */
record ArchivePage(
        Frame frame,
        String asked,
        List<Choice> choices,
        boolean cut,
        ArchiveProgress progress,
        Typed typed,
        String beside) {}
