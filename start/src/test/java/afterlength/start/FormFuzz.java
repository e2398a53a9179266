package afterlength.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.IntStream;

/**
 * Sends seeded nonsense into every form: pieces of good and bad values, fields left out, doubled or unknown. Every some hundred cases the
 * shop is put back to its beginning, so that such a stretch can be run again by the seed it began with. Several hands work at once,
 * each in a shop of its own. Run by hand for many:
 * {@code FormFuzz 10000 ["words of the form's address" [first seed [hands [folder]]]]}; quickest with a folder in memory. Whoever ends it early is told how far
 * it came: every kind of form has had as many cases by then.
 */
final class FormFuzz {
    static final int CASES_IN_ONE_STRETCH = 250;
    private static final long LONGEST_MS = 10_000;
    /** The kinds of treatment have a form each that differs by its address only; and a form may have several buttons. */
    private static final String WORD_OR_BUTTON = "(?<=/shelf/times)/[a-z-]+| [a-z_]+=[^ ]*$";

    private final Path folder;
    private final FuzzTally tally = new FuzzTally();
    private final Queue<Stretch> ahead = new ConcurrentLinkedQueue<>();

    private record Stretch(String kind, long firstSeed, int cases) {}

    FormFuzz(Path folder) {
        this.folder = folder;
    }

    FuzzTally tally() {
        return tally;
    }

    /** So many cases for each kind of form whose address holds these words, in one shop. */
    void run(int cases, String words, long firstSeed) throws IOException {
        run(cases, words, firstSeed, 1);
    }

    void run(int cases, String words, long firstSeed, int hands) throws IOException {
        List<FuzzShop> shops = new ArrayList<>();
        for (int n = 0; n < hands; n++) {
            shops.add(FuzzShop.in(folder.resolve("hand-" + n)));
        }
        List<String> kinds = merged(shops.get(0)).keySet().stream()
                .filter(kind -> kind.contains(words))
                .toList();
        for (int from = 0; from < cases; from += CASES_IN_ONE_STRETCH) {
            for (String kind : kinds) {
                ahead.add(new Stretch(kind, firstSeed + from, Math.min(CASES_IN_ONE_STRETCH, cases - from)));
            }
        }
        List<Thread> working =
                shops.stream().map(shop -> new Thread(() -> work(shop))).toList();
        working.forEach(Thread::start);
        for (Thread hand : working) {
            try {
                hand.join();
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
                throw new IOException(stopped);
            }
        }
    }

    private static Map<String, List<PageForm>> merged(FuzzShop shop) {
        Map<String, List<PageForm>> merged = new TreeMap<>();
        shop.forms()
                .forEach((kind, forms) -> merged.computeIfAbsent(
                                kind.replaceAll(WORD_OR_BUTTON, ""), none -> new ArrayList<>())
                        .addAll(forms));
        return merged;
    }

    private void work(FuzzShop shop) {
        try (shop) {
            Map<String, List<PageForm>> forms = merged(shop);
            for (Stretch next = ahead.poll(); next != null; next = ahead.poll()) {
                shop.renew();
                Stretch stretch = next;
                List<PageForm> same = forms.getOrDefault(stretch.kind(), List.of());
                IntStream.range(0, same.isEmpty() ? 0 : stretch.cases())
                        .forEach(n -> send(shop.caller(), same, stretch.kind(), stretch.firstSeed() + n));
            }
        } catch (IOException | RuntimeException broken) {
            tally.fault("the shop itself: " + broken);
        }
    }

    private void send(QuickCaller caller, List<PageForm> same, String kind, long seed) {
        SplittableRandom random = new SplittableRandom(seed * 31 + kind.hashCode());
        PageForm form = same.get(random.nextInt(same.size()));
        List<Map.Entry<String, String>> fields = FormNonsense.fields(form, random);
        String typed = FormNonsense.typeWords(form, fields, seed, random);
        String shown = "seed " + seed + " " + kind + " " + fields;
        long begun = System.nanoTime();
        int status = 599;
        try {
            Caller.Answer answer = answer(caller, form, fields, random);
            status = answer.status();
            judge(shown, typed, answer);
        } catch (IOException none) {
            tally.fault(shown + " was not answered: " + none);
        }
        long took_ns = System.nanoTime() - begun;
        if (took_ns / 1_000_000 > LONGEST_MS) {
            tally.fault(shown + " took longer than " + LONGEST_MS + " ms");
        }
        tally.answered(kind, status, took_ns);
    }

    /** Whatever is wrong with a form, what a person typed comes back with it. */
    private void judge(String shown, String typed, Caller.Answer answer) {
        if (answer.status() >= 500) {
            tally.fault(shown + " was answered with " + answer.status());
        }
        if (answer.page() && answer.text().isBlank()) {
            tally.fault(shown + " was answered with an empty page");
        }
        if ((answer.status() == 422 || answer.status() == 409) && !answer.text().contains(typed)) {
            tally.fault(shown + " came back without what was typed: " + typed);
        }
    }

    private static Caller.Answer answer(
            QuickCaller caller, PageForm form, List<Map.Entry<String, String>> fields, SplittableRandom random)
            throws IOException {
        String address = form.address().replaceFirst("#.*", "");
        if (!form.posts()) {
            return caller.get(address + Query.of(address, fields));
        }
        if (form.uploads().isEmpty() || random.nextInt(4) == 0) {
            return caller.post(
                    address,
                    "application/x-www-form-urlencoded",
                    Query.body(fields).getBytes(StandardCharsets.US_ASCII));
        }
        String fileName = FormNonsense.piece(random).replaceAll("[\r\n\"]", "_");
        return caller.post(
                address, Multipart.KIND, Multipart.of(fields, form.uploads(), fileName, FormNonsense.file(random)));
    }

    public static void main(String[] arguments) throws IOException {
        List<String> given = List.of(arguments);
        Path folder = given.size() > 4 ? Path.of(given.get(4)) : Files.createTempDirectory("form-fuzz-");
        FormFuzz fuzz = new FormFuzz(folder);
        long begun = System.nanoTime();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> fuzz.tally().print((System.nanoTime() - begun) / 1e9)));
        fuzz.run(
                given.isEmpty() ? 10_000 : Integer.parseInt(given.get(0)),
                given.size() > 1 ? given.get(1) : "",
                given.size() > 2 ? Long.parseLong(given.get(2)) : 1,
                given.size() > 3 ? Integer.parseInt(given.get(3)) : 3);
        System.exit(0);
    }
}
