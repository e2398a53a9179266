package afterlength.workshop.examination;

import afterlength.sight.measure.Caveat;
import afterlength.sight.measure.MeasuredPhoto;
import afterlength.sight.measure.PhotoAnswer;
import afterlength.workshop.desk.Figures;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What is said of the card in a photograph; while it is looked for, the line asks again by itself.
 *
 * @param again whether looking once more is offered
 * @param lens with which it was measured, or null
 * @param colours of the card in the picture, or null where none was found
 */
record CardLine(
        long photographId,
        boolean working,
        boolean again,
        String words,
        List<String> caveats,
        @Nullable LensLine lens,
        @Nullable CardColours colours) {
    private static final String ALL_THE_SAME = " Marks can be drawn all the same, without millimetres.";

    static CardLine of(Photograph photograph, CardSearch search) {
        long id = photograph.id();
        return search.findAnswer()
                .map(answer -> ended(id, answer, search))
                .orElseGet(() -> new CardLine(
                        id,
                        true,
                        false,
                        search.progressWords() + " Marks can be drawn meanwhile.",
                        List.of(),
                        null,
                        null));
    }

    private static CardLine ended(long id, PhotoAnswer answer, CardSearch search) {
        if (answer instanceof MeasuredPhoto photo) {
            List<String> caveats = photo.caveats().stream().map(Caveat::text).toList();
            return new CardLine(
                    id,
                    false,
                    false,
                    found(photo),
                    caveats,
                    search.findLens().orElse(null),
                    search.findColours().orElse(null));
        }
        return answer instanceof PhotoAnswer.Refused refused
                ? new CardLine(
                        id,
                        false,
                        true,
                        "No millimetres from this picture. " + refused.reason() + ALL_THE_SAME,
                        List.of(),
                        null,
                        null)
                : new CardLine(
                        id, false, true, "The search for a card was stopped." + ALL_THE_SAME, List.of(), null, null);
    }

    private static String found(MeasuredPhoto photo) {
        String word = photo.card().word();
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1) + " card found by "
                + photo.fitted().corners() + " corners; the camera stood "
                + Figures.whole(photo.fitted().view().cameraHeight_mm()) + " mm above it, tilted by "
                + Figures.whole(photo.fitted().view().tilt_deg()) + "°. Marks are measured.";
    }
}
