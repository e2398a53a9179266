package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.Desk;
import afterlength.workshop.ledger.ShopFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every form of the demonstration shop is filled with hostile text and every page is visited: text stays text. */
class HostilePagesTest {
    @TempDir
    Path folder;

    private final List<String> faults = new ArrayList<>();
    private int accepted;
    private int refused;

    @Test
    void textStaysTextInEveryFieldAndOnEveryPage() throws IOException {
        House house = House.of(
                ShopFolder.open(FilledShop.copyTo(folder.resolve("shop"))), Clock.system(ZoneId.systemDefault()));
        try (Desk desk = house.openDesk(0)) {
            Caller caller = new Caller(desk.address());
            Crawl first = new Crawl(caller).walk();
            fillEverything(caller, first);
            Crawl second = new Crawl(caller).walk();
            fillEverything(caller, second);
            Crawl third = new Crawl(caller).walk();
            faults.addAll(first.faults());
            faults.addAll(second.faults());
            faults.addAll(third.faults());
            assertThat(faults).isEmpty();
            assertThat(first.pages().size()).isGreaterThan(60);
            assertThat(first.forms().size()).isGreaterThan(40);
            assertThat(accepted)
                    .as("some hostile words were kept, so that pages had to show them")
                    .isGreaterThan(60);
            assertThat(refused).isGreaterThan(60);
        }
    }

    private void fillEverything(Caller caller, Crawl crawl) throws IOException {
        SplittableRandom random = new SplittableRandom(8);
        for (List<PageForm> same : List.copyOf(crawl.forms().values())) {
            for (PageForm form : List.copyOf(same)) {
                send(caller, crawl, form, form.filled(field -> hostileInWords(field, random)));
                send(caller, crawl, form, form.filled(field -> hostileEverywhere(field, random)));
            }
        }
    }

    private void send(Caller caller, Crawl crawl, PageForm form, List<Map.Entry<String, String>> fields)
            throws IOException {
        String shown = form.kind() + " " + fields;
        Caller.Answer answer;
        if (!form.posts()) {
            answer = caller.get(form.address() + Query.of(form.address(), fields));
        } else if (form.uploads().isEmpty()) {
            answer = caller.post(form.address(), fields);
        } else {
            byte[] file = HostileText.ALL.get(0).getBytes(java.nio.charset.StandardCharsets.UTF_8);
            answer = caller.upload(form.address(), fields, form.uploads(), "=<xss-probe>.csv", file);
        }
        crawl.look(shown, answer);
        if (answer.location().startsWith("/")) {
            crawl.look(shown + " → " + answer.location(), caller.get(answer.location()));
        }
        if (answer.status() < 400) {
            accepted++;
        } else {
            refused++;
        }
    }

    /** Words are hostile, numbers and dates are as they should be: much of this is kept. */
    private static PageForm.Field hostileInWords(PageForm.Field field, SplittableRandom random) {
        if (!field.written()) {
            return field;
        }
        String value = switch (field.kind()) {
            case "number" -> field.value().isEmpty() ? "12" : field.value();
            case "date" ->
                field.value().isEmpty() ? LocalDate.now(ZoneId.systemDefault()).toString() : field.value();
            case "time", "datetime-local" -> field.value();
            default -> one(random);
        };
        return new PageForm.Field(field.name(), field.kind(), value, field.choices());
    }

    private static PageForm.Field hostileEverywhere(PageForm.Field field, SplittableRandom random) {
        return new PageForm.Field(field.name(), field.kind(), one(random), field.choices());
    }

    private static String one(SplittableRandom random) {
        return HostileText.ALL.get(random.nextInt(HostileText.ALL.size()));
    }
}
