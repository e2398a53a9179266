package afterlength.workshop.setup;

import afterlength.craft.setup.Crown;
import afterlength.craft.setup.EvenPlayCrown;
import afterlength.craft.setup.RadiusCrown;
import afterlength.craft.setup.TemplateCrown;
import afterlength.workshop.desk.Choice;
import java.util.Arrays;
import java.util.List;

/** The three ways to ask for a crown. */
enum CrownKind {
    RADIUS("a radius"),
    TEMPLATE("own template"),
    EVEN_PLAY("even play");

    static final List<Choice> CHOICES = Arrays.stream(values())
            .map(kind -> new Choice(kind.name(), kind.words))
            .toList();

    private final String words;

    CrownKind(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    static CrownKind of(Crown crown) {
        if (crown instanceof TemplateCrown) {
            return TEMPLATE;
        }
        return crown instanceof EvenPlayCrown ? EVEN_PLAY : RADIUS;
    }

    /** As a form sends it; a radius when it sends nothing. */
    static CrownKind read(String typed) {
        return Arrays.stream(values())
                .filter(kind -> kind.name().equals(typed))
                .findFirst()
                .orElse(RADIUS);
    }

    Crown crown(double radius_mm, TemplateCrown template) {
        return switch (this) {
            case RADIUS -> new RadiusCrown(radius_mm);
            case TEMPLATE -> template;
            case EVEN_PLAY -> new EvenPlayCrown();
        };
    }
}
