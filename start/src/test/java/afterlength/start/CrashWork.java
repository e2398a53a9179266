package afterlength.start;

import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jsoup.Jsoup;

/** Mixed work on an open shop, drawn from a seed; everything that was answered for is entered in a ledger of promises. */
final class CrashWork implements Runnable {
    private final Caller caller;
    private final Promises promises;
    private final SplittableRandom random;
    private final String name;
    private int done;

    CrashWork(String address, Promises promises, String name, SplittableRandom random) {
        caller = new Caller(address);
        this.promises = promises;
        this.name = name;
        this.random = random;
    }

    /** Works until the program no longer answers. */
    @Override
    public void run() {
        try {
            while (!Thread.currentThread().isInterrupted()) {
                one();
                done++;
            }
        } catch (IOException killed) {
            Thread.currentThread().interrupt();
        }
    }

    private void one() throws IOException {
        int lot = random.nextInt(100);
        if (lot < 15) {
            receive();
        } else if (lot < 35) {
            finding();
        } else if (lot < 47) {
            measure();
        } else if (lot < 67) {
            photograph();
        } else if (lot < 75) {
            settings();
        } else if (lot < 80) {
            backup();
        } else {
            work(lot);
        }
    }

    private void work(int lot) throws IOException {
        if (lot < 88) {
            step();
        } else if (lot < 92) {
            plan();
        } else if (lot < 97) {
            bill();
        } else {
            archive();
        }
    }

    private String word() {
        return name + "-" + done + "-" + Long.toString(random.nextLong() & Long.MAX_VALUE, 36);
    }

    private void receive() throws IOException {
        String word = word();
        Caller.Answer answer = caller.post(
                "/receive", Map.of("owner_name", "A person", "kind", "VIOLA", "name", word, "reason", "To play"));
        expect(answer, 302, "receive");
        promises.row("SELECT count(*) FROM instrument i JOIN visit v ON v.instrument_id = i.id WHERE i.name = ?", word);
    }

    private void finding() throws IOException {
        String word = word();
        Map<String, String> form = Map.of(
                "part",
                "top",
                "kind",
                "crack",
                "observation",
                word,
                "hand",
                "H",
                "age",
                "OLD",
                "hinders_playing",
                "NO",
                "gets_worse",
                "NO",
                "size_reason",
                "not measured yet");
        Caller.Answer answer = caller.post("/visits/1/examination", form);
        expect(answer, 302, "finding");
        promises.row("SELECT count(*) FROM finding_now WHERE observation = ?", word);
    }

    private void measure() throws IOException {
        String word = word();
        Map<String, String> form = Map.of(
                "quantity",
                word,
                "value",
                "34.5",
                "plus_minus",
                "0.5",
                "unit",
                "mm",
                "method",
                "rule",
                "hand",
                "H",
                "moment",
                "BEFORE");
        expect(caller.post("/visits/1/measures", form), 302, "measure");
        promises.row("SELECT count(*) FROM measure_now WHERE quantity = ?", word);
    }

    private void photograph() throws IOException {
        boolean large = random.nextInt(4) == 0;
        byte[] jpeg = NoisyPicture.of(large ? 900 : 90, large ? 700 : 70, random);
        Caller.Answer answer = caller.upload(
                "/visits/1/photographs", List.of(Map.entry("moment", "BEFORE")), "files", "noise.jpg", jpeg);
        expect(answer, 200, "photograph");
        promises.photograph(sha256(jpeg), jpeg.length);
    }

    private void step() throws IOException {
        String word = word();
        Map<String, String> form = Map.of("name", word, "hands_typical", "45", "wait_typical", "2", "blocks", "yes");
        expect(caller.post("/visits/1/steps/new", form), 302, "step");
        promises.row("SELECT count(*) FROM step WHERE name = ?", word);
    }

    /** Lays the bench out anew and takes what moved, as soon as there is a step to lay out. */
    private void plan() throws IOException {
        Caller.Answer draft = caller.get("/plan/again");
        expect(draft, 302, "plan again");
        Caller.Answer taken = caller.post(draft.location() + "/take", Map.of("which", "moved"));
        expect(taken, 302, "take the plan");
        if (taken.location().equals("/plan?taken=yes")) {
            promises.plan();
        }
    }

    private void bill() throws IOException {
        String word = word();
        Map<String, String> form = Map.of(
                "title_own1",
                "Work",
                "net_own1",
                "12,50",
                "tax_own1",
                "20",
                "supplied_on",
                LocalDate.now(ZoneId.systemDefault()).toString(),
                "buyer",
                "A person",
                "remark",
                word,
                "hand",
                "H",
                "do",
                "issue");
        expect(caller.post("/visits/1/invoice", form), 302, "bill");
        promises.row("SELECT count(*) FROM invoice WHERE remark = ?", word);
    }

    /** Made behind the pages and kept nowhere in the shop, so that nothing is promised: it is here to be in the way. */
    private void archive() throws IOException {
        expect(caller.post("/shelf/archive/make", Map.of("what", "shop")), 302, "archive");
    }

    private void settings() throws IOException {
        String word = word();
        promises.settingTried(word);
        Map<String, String> form = Map.of(
                "shop_name",
                word,
                "hands",
                "H",
                "currency",
                "EUR",
                "per_hour",
                "60",
                "tax",
                "20",
                "closes_at",
                "18:00",
                "paper",
                "A4");
        expect(caller.post("/shelf/settings", form), 302, "settings");
        promises.settingKept(word);
    }

    private void backup() throws IOException {
        expect(caller.post("/shelf/backups", Map.of()), 302, "backup");
        promises.backup();
    }

    private static void expect(Caller.Answer answer, int status, String what) {
        if (answer.status() != status) {
            throw new AssertionError(what + " was answered with " + answer.status() + ": "
                    + Jsoup.parse(answer.text()).select(".problems, .answer").text());
        }
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
