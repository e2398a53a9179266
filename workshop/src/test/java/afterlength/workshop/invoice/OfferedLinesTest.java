package afterlength.workshop.invoice;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.units.Money;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was agreed and what the diary tells, laid beside each other. */
class OfferedLinesTest {
    @TempDir
    Path folder;

    private BilledShop shop;

    @BeforeEach
    void open() {
        shop = new BilledShop(folder);
    }

    private OfferedLine offered(int place) {
        return shop.billing().offered().get(place);
    }

    @Test
    void countedMinutesAtTheAgreedRateAreOffered() {
        shop.agree(null, shop.seam, shop.retouch);
        shop.work(shop.seam, 50);
        assertThat(offered(0).offered()).isEqualTo(new Money(5_000)); // 50 min at EUR 60 an hour
        assertThat(offered(0).proposed()).isTrue();
        assertThat(offered(1).proposed()).as("nothing of it was done").isFalse();
    }

    @Test
    void theOfferStopsAtTheAgreedRangeOfTheLine() {
        shop.agree(null, shop.seam);
        shop.work(shop.seam, 5_000);
        assertThat(offered(0).byTime()).isEqualTo(new Money(500_000));
        assertThat(offered(0).offered()).isEqualTo(offered(0).agreed().highMinor());
        assertThat(offered(0).cappedByRange()).isTrue();
    }

    @Test
    void aLineThatWasNotAcceptedIsNeverOffered() {
        shop.agree(null, shop.seam);
        assertThat(shop.billing().offered())
                .extracting(line -> line.agreed().treatmentId())
                .containsExactly(shop.seam.id());
    }

    @Test
    void minutesOutsideTheAgreementAreToldAndNotOffered() {
        shop.agree(null, shop.seam, shop.retouch);
        shop.work(shop.retouch, 35);
        shop.agree(null, shop.seam);
        assertThat(shop.billing().minutesBeside()).isEqualTo(35);
        assertThat(InvoiceWords.beside(35))
                .isEqualTo("35 min in the diary belong to no agreed line and are not offered; work beside the agreement"
                        + " needs the owner’s word.");
    }

    @Test
    void aBilledLineIsNotOfferedTwiceUntilItsBillIsTakenBack() {
        shop.agree(null, shop.seam);
        shop.work(shop.seam, 50);
        Invoice bill = shop.invoices.issue(shop.cases
                .findOffered(shop.visit.id(), BilledShop.TODAY, "Ines")
                .orElseThrow());
        assertThat(offered(0).proposed()).isFalse();
        assertThat(offered(0).billedIn()).isEqualTo(bill);
        shop.invoices.credit(bill.id(), "wrong", "Ines");
        assertThat(offered(0).proposed()).isTrue();
    }
}
