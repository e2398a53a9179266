package afterlength.workshop.archive;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;

/**
 * Making and reading archives.
 *
 * @param choices what an archive can be made of, as a select has it
 * @param beside the folder in which new shops are made
 */
record ArchivePage(Frame frame, List<Choice> choices, ArchiveProgress progress, Typed typed, String beside) {}
