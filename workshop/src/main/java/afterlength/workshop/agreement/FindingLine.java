package afterlength.workshop.agreement;

import afterlength.workshop.desk.Figures;
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
        String hindersPlaying,
        String getsWorse,
        String observation) {

    /** "top: wing crack, treble side, 31 ± 1 mm"; a kind that names its part stands alone. */
    public String words() {
        String named =
                kind.toLowerCase(Locale.ROOT).contains(part.toLowerCase(Locale.ROOT)) ? kind : part + ": " + kind;
        return named + (place.isEmpty() ? "" : ", " + place) + size();
    }

    /** What it means for playing, empty when it does not hinder and does not get worse. */
    public String consequence() {
        String hinders = hindersPlaying.equals("YES") ? "hinders playing" : "";
        String worse = getsWorse.equals("YES") ? "gets worse" : "";
        return hinders.isEmpty() || worse.isEmpty() ? hinders + worse : hinders + ", " + worse;
    }

    private String size() {
        if (sizeMm == null) {
            return "";
        }
        return ", "
                + (sizePlusMinusMm == null
                        ? Figures.plain(sizeMm) + " mm"
                        : Figures.plusMinus(sizeMm, sizePlusMinusMm, "mm"));
    }
}
