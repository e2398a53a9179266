package afterlength.workshop.instrument;

import gg.jte.Content;
import java.util.List;

/** A visit as the page tells it: one part a stage. */
public record VisitStory(Visit visit, List<Part> parts) {
    /** A stage's part of the story. */
    public record Part(String name, Content content) {}

    static VisitStory of(Visit visit, List<Chapter> chapters) {
        return new VisitStory(
                visit,
                chapters.stream()
                        .map(chapter -> new Part(chapter.name(), chapter.about(visit)))
                        .toList());
    }
}
