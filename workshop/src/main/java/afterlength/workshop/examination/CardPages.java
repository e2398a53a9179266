package afterlength.workshop.examination;

import afterlength.sight.card.Card;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.paper.PaperSize;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.Locale;

/** The cards: as sheets to print, and the search for one in a photograph. */
public final class CardPages implements Room {
    private final MarkGrounds grounds;
    private final CardSearches searches;
    private final String drawnBy;

    public CardPages(MarkGrounds grounds, CardSearches searches, String drawnBy) {
        this.grounds = grounds;
        this.searches = searches;
        this.drawnBy = drawnBy;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/cards/{card}/{paper}.pdf", this::sheet);
        routes.get("/photographs/{photograph}/card", this::line);
        routes.post("/photographs/{photograph}/card/cancel", context -> {
            searches.of(grounds.photograph(context).photograph()).cancel();
            answer(context);
        });
        routes.post("/photographs/{photograph}/card/again", context -> {
            searches.again(grounds.photograph(context).photograph());
            answer(context);
        });
    }

    private void line(Context context) {
        Photograph photograph = grounds.photograph(context).photograph();
        context.header("Cache-Control", "no-store");
        Templates.show(context, CardLine.of(photograph, searches.of(photograph)));
    }

    /** The live page wants the line alone, a page without script the whole page. */
    private void answer(Context context) {
        if (context.header("HX-Request") == null) {
            context.redirect(grounds.photograph(context).page());
        } else {
            line(context);
        }
    }

    private void sheet(Context context) {
        String word = context.pathParam("card");
        PaperSize paper = Arrays.stream(PaperSize.values())
                .filter(size -> lower(size.words()).equals(context.pathParam("paper")))
                .findFirst()
                .orElseThrow(() -> new NotHere("paper", context.pathParam("paper")));
        Card card = Card.POCKET.word().equals(word) ? Card.POCKET : CardSheet.body(paper);
        if (!card.word().equals(word)) {
            throw new NotHere("card", word);
        }
        context.contentType("application/pdf")
                .header(
                        "Content-Disposition",
                        "inline; filename=\"" + word + "-card-" + lower(paper.words()) + ".pdf\"")
                .result(CardSheet.pdf(card, paper, number(context), drawnBy));
    }

    /** What is no number up to 999 counts as the first sheet. */
    private static int number(Context context) {
        String number = context.queryParam("number");
        return number != null && number.matches("[1-9]\\d{0,2}") ? Integer.parseInt(number) : 1;
    }

    private static String lower(String words) {
        return words.toLowerCase(Locale.ROOT);
    }
}
