package afterlength.workshop.work;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.MoneyText;
import afterlength.workshop.ledger.Settings;
import java.util.List;
import org.jspecify.annotations.Nullable;

record ShelfPage(
        Frame frame,
        Settings settings,
        List<Material> materials,
        List<Material> putAway,
        @Nullable Notice notice) {

    String price() {
        return settings.perHour().equals(Money.NOTHING)
                ? "not set yet"
                : MoneyText.words(settings.perHour(), settings.currency()) + " an hour, before "
                        + Figures.plain(settings.taxPermille() / 10.0) + " % tax";
    }

    String hands() {
        return String.join(", ", settings.hands());
    }

    String closing() {
        return Days.clock(settings.closesAt());
    }
}
