package afterlength.workshop.work;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;

record SettingsPage(Frame frame, Typed typed) {
    static final List<Choice> PAPERS =
            List.of(new Choice("A4", "A4, 210 × 297 mm"), new Choice("LETTER", "US Letter, 215.9 × 279.4 mm"));
}
