package afterlength.workshop.setup;

import afterlength.craft.setup.PostCut;
import afterlength.craft.setup.PostEnd;
import afterlength.craft.units.Problem;
import afterlength.workshop.desk.Figures;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Length and ends of the post. */
record PostPart(BenchPost post) {
    Optional<PostCut> cut() {
        return post.find().flatMap(answer -> answer instanceof PostCut cut ? Optional.of(cut) : Optional.empty());
    }

    List<Problem> problems() {
        return post.problems();
    }

    boolean begun() {
        return post.missing().size() < BenchPost.all().size();
    }

    String missing() {
        return String.join(
                ", ",
                post.missing().stream()
                        .map(reading -> reading.label().toLowerCase(Locale.ROOT))
                        .toList());
    }

    static String length(PostCut cut) {
        return "Cut the post "
                + Figures.plusMinus(cut.length().mm(), cut.plusMinus().mm(), "mm") + " long on its axis";
    }

    static String longest(PostCut cut) {
        return "Its longest side is " + Figures.mm(cut.longestSide().mm(), 1) + "; leave it longer and fit it by hand.";
    }

    static String end(String which, PostEnd end) {
        return which + ": " + Figures.fixed(Math.abs(end.along().deg()), 1) + "° longer to the "
                + (end.along().deg() >= 0 ? "tail" : "neck") + ", "
                + Figures.fixed(Math.abs(end.across().deg()), 1) + "° longer to the "
                + (end.across().deg() >= 0 ? "treble" : "bass") + ", ± "
                + Figures.fixed(end.plusMinus().deg(), 1) + "°.";
    }
}
