package afterlength.workshop.agreement;

import afterlength.workshop.desk.Figures;
import afterlength.workshop.examination.Answer;
import afterlength.workshop.examination.Finding;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What this stage needs to know of a finding: enough to name it to the owner and to choose a treatment. */
public record FindingLine(
        long id,
        String part,
        String kind,
        String place,
        @Nullable Double sizeMm,
        @Nullable Double sizePlusMinusMm,
        boolean hindersPlaying,
        boolean getsWorse,
        String observation) {

    static FindingLine of(Finding finding) {
        return new FindingLine(
                finding.id(),
                finding.part(),
                finding.kind(),
                finding.place(),
                finding.sizeMm(),
                finding.sizePlusMinusMm(),
                finding.hindersPlaying() == Answer.YES,
                finding.getsWorse() == Answer.YES,
                finding.observation());
    }

    /** "wing crack, top, treble side, 31 ± 1 mm"; a kind that names its part stands alone. */
    public String words() {
        boolean named = kind.toLowerCase(Locale.ROOT).contains(part.toLowerCase(Locale.ROOT));
        return kind + (named ? "" : ", " + part) + (place.isEmpty() ? "" : ", " + place) + size();
    }

    boolean isCrack() {
        return kind.toLowerCase(Locale.ROOT).contains("crack");
    }

    /** What it means for playing, empty when it does not hinder and does not get worse. */
    public String consequence() {
        String hinders = hindersPlaying ? "hinders playing" : "";
        String worse = getsWorse ? "gets worse" : "";
        return hinders.isEmpty() || worse.isEmpty() ? hinders + worse : hinders + ", " + worse;
    }

    /** Held together, so that no line ends between a figure and its unit. */
    private String size() {
        if (sizeMm == null) {
            return "";
        }
        String size = sizePlusMinusMm == null
                ? Figures.plain(sizeMm) + " mm"
                : Figures.plusMinus(sizeMm, sizePlusMinusMm, "mm");
        return ", " + size.replace(' ', '\u00a0');
    }
}
