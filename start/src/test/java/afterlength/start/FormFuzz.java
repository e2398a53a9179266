package afterlength.start;

import afterlength.workshop.desk.Desk;
import afterlength.workshop.ledger.ShopFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * Sends seeded nonsense into every form: pieces of good and bad values, fields left out, doubled or unknown. After some hundred cases
 * the shop is taken fresh, so that pages stay short. Run by hand for many: {@code FormFuzz 10000 [words of the form's address]}.
 */
final class FormFuzz {
    private static final int CASES_IN_ONE_SHOP = 1500;
    private static final long LONGEST_MS = 30_000;

    private static final List<String> PIECES = List.of(
            "",
            " ",
            "0",
            "-1",
            "1",
            "2",
            "12",
            "12,5",
            "12.5",
            "0,0001",
            "1e3",
            "1e308",
            "-1e308",
            "1e999",
            "NaN",
            "Infinity",
            "∞",
            "١٢",
            "½",
            "999999999",
            "9999999999999999999999",
            "0x10",
            "1.2.3",
            "1,2,3",
            "1 000",
            "true",
            "null",
            "2026-03-14",
            "2026-02-30",
            "0000-00-00",
            "9999-12-31",
            "+999999999-01-01",
            "2026-03-14T10:30",
            "10:30",
            "25:61",
            "VIOLA",
            "BEFORE",
            "AFTER",
            "FULL",
            "YES",
            "yes",
            "even play",
            "square",
            "front",
            "a",
            "A4",
            "E5",
            "seam",
            "[[0,0],[10,0],[10,10]]",
            "0 0 10 0 10 10",
            "0,0; 10,0; 10,10",
            "M0 0L10 10",
            "{\"a\":1}",
            "[]",
            "400 10 0.1 0.2 0.3",
            "L*a*b*",
            "50 10 10",
            "\uD800",
            "\u0000",
            "\uFFFE",
            "\n",
            "\r\n",
            "a\nb\nc",
            "é".repeat(70),
            "x".repeat(5000),
            "9".repeat(400),
            "%",
            "%00",
            "&",
            "<b>",
            "\"",
            "'",
            "\\",
            "..",
            "/",
            "-",
            "–",
            "±",
            "3 ± 0.5");

    private final Path folder;
    private final List<String> faults = new ArrayList<>();
    private final Map<String, Integer> casesOfKind = new TreeMap<>();
    private int shops;

    FormFuzz(Path folder) {
        this.folder = folder;
    }

    List<String> faults() {
        return faults;
    }

    Map<String, Integer> casesOfKind() {
        return casesOfKind;
    }

    /** So many cases for each kind of form whose address holds these words. */
    void run(int cases, String words, long firstSeed) throws IOException {
        List<String> kinds;
        try (Desk desk = freshDesk()) {
            kinds = new Crawl(new Caller(desk.address()))
                    .walk().forms().keySet().stream()
                            .filter(kind -> kind.contains(words))
                            .toList();
        }
        for (int from = 0; from < cases; from += CASES_IN_ONE_SHOP) {
            for (int n = 0; n < kinds.size(); ) {
                n = inOneShop(kinds, n, firstSeed + from, Math.min(CASES_IN_ONE_SHOP, cases - from));
            }
        }
    }

    private int inOneShop(List<String> kinds, int from, long seed, int cases) throws IOException {
        int n = from;
        try (Desk desk = freshDesk()) {
            Caller caller = new Caller(desk.address());
            Map<String, List<PageForm>> forms = new Crawl(caller).walk().forms();
            for (int sent = 0; n < kinds.size() && sent < CASES_IN_ONE_SHOP; n++) {
                List<PageForm> same = forms.getOrDefault(kinds.get(n), List.of());
                for (int one = 0; one < cases && !same.isEmpty(); one++, sent++) {
                    send(caller, same, kinds.get(n), seed + one);
                }
            }
        }
        return n;
    }

    private Desk freshDesk() throws IOException {
        Path shop = FilledShop.copyTo(folder.resolve("shop-" + shops++));
        return House.of(ShopFolder.open(shop), Clock.system(ZoneId.systemDefault()))
                .openDesk(0);
    }

    private void send(Caller caller, List<PageForm> same, String kind, long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed * 31 + kind.hashCode());
        PageForm form = same.get(random.nextInt(same.size()));
        List<Map.Entry<String, String>> fields = changed(form, random);
        String shown = "seed " + seed + " " + kind + " " + fields;
        long begun = System.nanoTime();
        try {
            judge(shown, answer(caller, form, fields, random));
        } catch (IOException none) {
            faults.add(shown + " was not answered: " + none);
        }
        if ((System.nanoTime() - begun) / 1_000_000 > LONGEST_MS) {
            faults.add(shown + " took longer than " + LONGEST_MS + " ms");
        }
        casesOfKind.merge(kind, 1, Integer::sum);
    }

    private void judge(String shown, Caller.Answer answer) {
        if (answer.status() >= 500) {
            faults.add(shown + " was answered with " + answer.status());
        }
        if (answer.page() && answer.text().isBlank()) {
            faults.add(shown + " was answered with an empty page");
        }
    }

    private static Caller.Answer answer(
            Caller caller, PageForm form, List<Map.Entry<String, String>> fields, SplittableRandom random)
            throws IOException {
        if (!form.posts()) {
            return caller.get(form.address() + Query.of(form.address(), fields));
        }
        if (form.uploads().isEmpty() || random.nextInt(4) == 0) {
            return caller.post(form.address(), fields);
        }
        return caller.upload(
                form.address(), fields, form.uploads(), piece(random).replaceAll("[\r\n\"]", "_"), file(random));
    }

    /** Most fields as the page fills them, some as pieces; now and then one is missing, doubled or unknown. */
    private static List<Map.Entry<String, String>> changed(PageForm form, SplittableRandom random) {
        int spoilt = random.nextInt(1, 6);
        List<Map.Entry<String, String>> fields = new ArrayList<>(form.filled(field -> good(field, random)));
        for (int n = 0; n < spoilt && !fields.isEmpty(); n++) {
            int at = random.nextInt(fields.size());
            String name = fields.get(at).getKey();
            switch (random.nextInt(10)) {
                case 0 -> fields.remove(at);
                case 1 -> fields.add(Map.entry(name, piece(random)));
                case 2 -> fields.add(Map.entry(piece(random), piece(random)));
                default -> fields.set(at, Map.entry(name, piece(random)));
            }
        }
        return fields;
    }

    private static PageForm.Field good(PageForm.Field field, SplittableRandom random) {
        String value = field.value();
        if (!field.choices().isEmpty() && random.nextInt(3) == 0) {
            value = field.choices().get(random.nextInt(field.choices().size()));
        } else if (value.isEmpty() && field.written()) {
            value = field.kind().equals("number") ? "12" : field.kind().equals("date") ? "2026-03-14" : "words";
        }
        return new PageForm.Field(field.name(), field.kind(), value, field.choices());
    }

    private static String piece(SplittableRandom random) {
        return PIECES.get(random.nextInt(PIECES.size()));
    }

    private static byte[] file(SplittableRandom random) throws IOException {
        byte[] bytes = random.nextBoolean()
                ? NoisyPicture.of(20, 20, random)
                : ("time,temperature,humidity\n2026-01-01 00:00,20.5,45\n" + piece(random))
                        .getBytes(StandardCharsets.UTF_8);
        for (int n = random.nextInt(6); n > 0; n--) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return random.nextInt(4) == 0 ? java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes;
    }

    public static void main(String[] arguments) throws IOException {
        int cases = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 10_000;
        FormFuzz fuzz = new FormFuzz(Files.createTempDirectory("form-fuzz-"));
        fuzz.run(cases, arguments.length > 1 ? arguments[1] : "", 1);
        fuzz.casesOfKind().forEach((kind, count) -> System.out.println(count + "  " + kind));
        fuzz.faults().stream().limit(50).forEach(System.out::println);
        System.out.println(fuzz.casesOfKind().size() + " kinds of form, "
                + fuzz.casesOfKind().values().stream()
                        .mapToInt(Integer::intValue)
                        .sum() + " cases, "
                + fuzz.faults().size() + " faults");
        System.exit(0);
    }
}
