package afterlength.workshop.paper;

import java.util.Map;

/**
 * A text paper before it has pages.
 *
 * @param title its heading and the title of the file
 * @param language of the words, such as {@code en}
 * @param body well-formed XHTML without a {@code body} element around it: sections from {@code h2} down, and the classes
 *     of {@code paper.css}; drawings stand in it as the SVG of {@link SvgPen#forPaper}
 * @param images JPEG or PNG by the name that {@code <img src="name">} gives; nothing else is ever fetched
 */
public record PaperDocument(
        String title, String language, PaperSize size, RunningWords running, String body, Map<String, byte[]> images) {
    public PaperDocument {
        images = Map.copyOf(images);
    }

    /** Everything that will be written on it. */
    String everyWord() {
        return title + running.instrument() + running.date() + body;
    }
}
