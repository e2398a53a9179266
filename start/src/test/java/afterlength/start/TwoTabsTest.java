package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.Desk;
import afterlength.workshop.ledger.ShopFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Two people have the same form open: the second to save sees both texts, and nothing is lost whichever way it ends. */
class TwoTabsTest {
    @TempDir
    static Path folder;

    private static Desk desk;
    private static Caller caller;

    @BeforeAll
    static void open() throws IOException {
        desk = House.of(
                        ShopFolder.open(FilledShop.copyTo(folder.resolve("shop"))),
                        Clock.system(ZoneId.systemDefault()))
                .openDesk(0);
        caller = new Caller(desk.address());
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    /** Where a form for changing something stands, and a field of it that takes any words. */
    static Stream<Arguments> forms() {
        return Stream.of(
                Arguments.of("/instruments/1/edit", "story_told"),
                Arguments.of("/owners/1/edit", "owner_remark"),
                Arguments.of("/visits/1/receipt", "wish"),
                Arguments.of("/treatments/1/edit", "if_left"),
                Arguments.of("/steps/1/change", "name"),
                Arguments.of("/shelf/materials/1", "remark"),
                Arguments.of("/shelf/settings", "address"),
                Arguments.of("/photographs/1/words", "caption"),
                Arguments.of("/visits/1/handover", "returned_parts"),
                Arguments.of("/visits/1/setup?moment=AFTER", "projection_mm"));
    }

    @ParameterizedTest
    @MethodSource("forms")
    void theSecondTabSeesBothTextsAndOverwritesNothingUnasked(String path, String field) throws IOException {
        boolean number = field.endsWith("_mm");
        String first = number ? "31.5" : "words of the first tab";
        String second = number ? "32.25" : "words of the second tab";
        PageForm one = formWith(path, field, caller.get(path).text());
        PageForm two = formWith(path, field, caller.get(path).text());
        assertThat(post(one, field, first).status()).as(path).isEqualTo(302);
        Caller.Answer refused = post(two, field, second);
        assertThat(refused.status()).as(path).isEqualTo(422);
        Document page = Jsoup.parse(refused.text());
        assertThat(page.select(".standings").text()).contains(first, second);
        assertThat(valueOf(path, field)).isEqualTo(first);
        PageForm again = formWith(path, field, refused.text());
        assertThat(again.fields().stream()
                        .filter(each -> each.name().equals(field))
                        .findFirst()
                        .orElseThrow()
                        .value())
                .isEqualTo(second);
        assertThat(post(again, field, second).status()).isEqualTo(302);
        assertThat(valueOf(path, field)).isEqualTo(second);
    }

    /** A correction is a new row of history, and the second finds its row replaced. */
    @Test
    void theSecondCorrectionOfAFindingIsRefusedAndKeepsItsWords() throws IOException {
        String path = "/findings/1/correct";
        PageForm one = formWith(path, "observation", caller.get(path).text());
        PageForm two = formWith(path, "observation", caller.get(path).text());
        assertThat(post(one, "observation", "words of the first tab").status()).isEqualTo(302);
        Caller.Answer refused = post(two, "observation", "words of the second tab");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text()).contains("words of the second tab");
        assertThat(caller.get("/visits/1/examination").text()).contains("words of the first tab");
    }

    private static String valueOf(String path, String field) throws IOException {
        return formWith(path, field, caller.get(path).text()).fields().stream()
                .filter(each -> each.name().equals(field))
                .map(PageForm.Field::value)
                .findFirst()
                .orElseThrow();
    }

    private static PageForm formWith(String path, String field, String html) {
        return PageForm.of(Jsoup.parse(html)).stream()
                .filter(form -> form.posts()
                        && form.fields().stream().anyMatch(each -> each.name().equals(field)))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no form with " + field + " at " + path + ":\n" + html));
    }

    private static Caller.Answer post(PageForm form, String name, String value) throws IOException {
        List<Map.Entry<String, String>> fields = form.filled(field ->
                field.name().equals(name) ? new PageForm.Field(name, field.kind(), value, field.choices()) : field);
        return caller.post(form.address(), fields);
    }
}
