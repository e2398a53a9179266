package afterlength.workshop.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.archive.SmallShop;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.ledger.SettingsStore;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept about a person, as its page shows and erases it. */
class PersonPageTest {
    @TempDir
    Path root;

    private SmallShop shop;
    private OwnerStore owners;
    private OpenedDesk desk;
    private int forgotten;

    @BeforeEach
    void open() throws IOException {
        shop = new SmallShop(root);
        owners = new OwnerStore(shop.ledger);
        SettingsStore settings = new SettingsStore(shop.ledger);
        desk = OpenedDesk.with(new PersonPages(
                new Frames(settings),
                settings,
                owners,
                shop.ledger,
                new Eraser(shop.folder, shop.ledger),
                () -> forgotten++,
                SmallShop.CLOCK));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void everyTextThatWouldChangeIsShown() {
        OpenedDesk.Answer page = desk.get("/owners/1/data");
        assertThat(page.words("textarea[name=words]"))
                .contains("Clementine Vantongeren", "clementine.vantongeren@example.org", "1 Larkrise Lane");
        assertThat(page.lines("tbody tr")).as("nobody looked yet").isEmpty();
        OpenedDesk.Answer looked = desk.post(
                "/owners/1/data",
                "words",
                page.page().select("textarea[name=words]").get(0).wholeText());
        assertThat(looked.lines("tbody tr"))
                .containsExactlyInAnyOrder(
                        "visit, brought by Clementine Vantongeren [erased]",
                        "visit, wish as Clementine Vantongeren said as [erased] said");
    }

    @Test
    void lookingAgainKeepsWhatWasTypedAndChangesNothing() {
        OpenedDesk.Answer page = desk.post("/owners/1/data", "words", "Crack in the top", "hand", "Me");
        assertThat(page.words("textarea[name=words]")).isEqualTo("Crack in the top");
        assertThat(page.lines("tbody tr")).hasSize(2).allMatch(row -> row.startsWith("visit, reason"));
        assertThat(owners.get(1).name()).isEqualTo("Clementine Vantongeren");
    }

    @Test
    void nothingIsErasedByASlip() {
        OpenedDesk.Answer page = desk.post("/owners/1/erase", "words", "Clementine", "hand", "Me", "sure", "yes");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.words(".problems"))
                .contains("“yes” is not the word erase. Write it to go on; nothing was erased.");
        assertThat(page.words("textarea[name=words]")).isEqualTo("Clementine");
        assertThat(owners.get(1).name()).isEqualTo("Clementine Vantongeren");
    }

    @Test
    void erasingSaysWhatItDidAndWhatIsBeyondIt() {
        OpenedDesk.Answer page = desk.post(
                "/owners/1/erase", "words", "Clementine Vantongeren\nClementine", "hand", "Me", "sure", "Erase");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.words("[role=status]"))
                .isEqualTo("Erased. 2 texts were changed, and one photograph written anew without the camera's notes."
                        + " What was seen, measured and done on the instruments is kept.");
        assertThat(page.words())
                .contains("No backup lies in the shop's folder.", "Copies elsewhere:", "a name on a case");
        assertThat(forgotten).as("archives that lay ready").isEqualTo(1);
        assertThat(owners.get(1).name()).isEqualTo("Erased owner 1");
        assertThat(owners.get(2).name()).isEqualTo("Balthasar Quirrenbach");
    }

    @Test
    void theCardIsHandedOut() {
        assertThat(desk.get("/owners/1/card.vcf").page().text()).contains("FN:Clementine Vantongeren");
    }
}
