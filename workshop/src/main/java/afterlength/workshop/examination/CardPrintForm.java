package afterlength.workshop.examination;

import afterlength.sight.card.Card;
import afterlength.sight.measure.Print;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Typed;
import java.time.Instant;
import java.util.List;

/** Reads the two check lines of a printed card. */
final class CardPrintForm {
    static final List<Choice> CARDS = List.of(
            new Choice(Card.BODY.name(), "body card, A4"),
            new Choice(Card.BODY_LETTER.name(), "body card, Letter"),
            new Choice(Card.POCKET.name(), "pocket card"));

    static final int HIGHEST_NUMBER = 999;

    private CardPrintForm() {}

    /** Keeps the lines and answers true, or notes what is wrong with them. */
    static boolean keep(Typed typed, CardPrintStore prints, Instant now) {
        Card card = typed.choice("card", "The card", Card.class);
        int number = number(typed);
        double level_mm = line(typed, "level_mm", "The level check line");
        double upright_mm = line(typed, "upright_mm", "The upright check line");
        if (card == null || !typed.sound()) {
            return false;
        }
        prints.add(new CardPrint(0, card, number, level_mm, upright_mm, now));
        return true;
    }

    /** The number on the sheet; 1 when none was typed. */
    static int number(Typed typed) {
        Integer number = typed.whole("number", "The number of the card", 1, HIGHEST_NUMBER);
        return number == null ? 1 : number;
    }

    private static double line(Typed typed, String name, String label) {
        return typed.requiredDecimal(name, label, "mm", Print.SHORTEST_CHECK_LINE_MM, Print.LONGEST_CHECK_LINE_MM);
    }
}
