package afterlength.workshop.examination;

import afterlength.workshop.desk.Basis;
import afterlength.workshop.desk.Typed;
import java.util.List;
import java.util.Map;

/** Reads what a person says about one photograph, or about several brought together. */
final class PhotographForm {
    /** Offered, never forced. */
    static final List<String> VIEWS = List.of(
            "front",
            "back",
            "bass side",
            "treble side",
            "scroll, front",
            "scroll, bass side",
            "scroll, treble side",
            "neck and board",
            "bridge and strings",
            "inside",
            "label",
            "detail",
            "detail in raking light",
            "ultraviolet");

    private PhotographForm() {}

    static PhotographWords read(Typed typed) {
        Moment moment = typed.choice("moment", "The moment", Moment.class);
        return new PhotographWords(
                moment == null ? Moment.BEFORE : moment,
                typed.text("view", "The view", 80),
                typed.text("caption", "The caption", 500));
    }

    static Typed known(Photograph photograph) {
        return Typed.known(Basis.with(typedOf(photograph), typedOf(photograph)));
    }

    static Map<String, String> typedOf(Photograph photograph) {
        return Map.of(
                "moment", photograph.moment().name(),
                "view", photograph.view(),
                "caption", photograph.caption());
    }
}
