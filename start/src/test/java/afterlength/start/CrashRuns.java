package afterlength.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;

/**
 * Kills the program at random moments of seeded work and looks for everything it had answered for. A run follows on the last in the
 * same shop; after some runs a fresh shop is taken. Run by hand for many: {@code CrashRuns 300}.
 */
final class CrashRuns {
    private static final int RUNS_IN_ONE_SHOP = 20;
    private static final int LONGEST_WORK_MS = 1500;

    private final Path folder;
    private final List<Throwable> faults = new CopyOnWriteArrayList<>();
    private Promises promises = new Promises();
    private int acknowledged;
    private int killedWhileStarting;

    CrashRuns(Path folder) {
        this.folder = folder;
    }

    void run(long firstSeed, int runs) throws IOException, InterruptedException {
        for (int n = 0; n < runs; n++) {
            Path shop = folder.resolve("shop-" + n / RUNS_IN_ONE_SHOP);
            if (n % RUNS_IN_ONE_SHOP == 0) {
                promises = new Promises();
            }
            one(shop, firstSeed + n);
        }
    }

    int acknowledged() {
        return acknowledged;
    }

    private void one(Path shop, long seed) throws IOException, InterruptedException {
        SplittableRandom random = new SplittableRandom(seed);
        int before = promises.count();
        try (ShopProcess process = ShopProcess.start(shop)) {
            if (random.nextInt(10) == 0) {
                killedWhileStarting++;
                TimeUnit.MILLISECONDS.sleep(random.nextInt(2500));
            } else {
                work(process, seed, random);
            }
            process.kill();
        }
        acknowledged += Math.max(0, promises.count() - before);
        promises.check(shop, "seed " + seed);
    }

    private void work(ShopProcess process, long seed, SplittableRandom random)
            throws IOException, InterruptedException {
        String address = process.address();
        Caller caller = new Caller(address);
        if (caller.get("/visits/1/examination").status() == 404) {
            caller.post("/receive", Map.of("owner_name", "P", "kind", "VIOLA", "name", "first", "reason", "r"));
        }
        List<Thread> hands = List.of(
                new Thread(new CrashWork(address, promises, "a" + seed, random.split())),
                new Thread(new CrashWork(address, promises, "b" + seed, random.split())));
        Thread.UncaughtExceptionHandler keep = (thread, fault) -> {
            if (process.alive()) {
                faults.add(fault);
            }
        };
        hands.forEach(hand -> hand.setUncaughtExceptionHandler(keep));
        hands.forEach(Thread::start);
        TimeUnit.MILLISECONDS.sleep(random.nextInt(LONGEST_WORK_MS));
        process.kill();
        for (Thread hand : hands) {
            hand.join();
        }
        if (!faults.isEmpty()) {
            throw new AssertionError("seed " + seed + "\n" + process.said(), faults.get(0));
        }
    }

    String words(int runs) {
        return runs + " runs, " + killedWhileStarting + " of them killed while starting; " + acknowledged
                + " changes answered for, all there";
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        int runs = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 300;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        CrashRuns crashes = new CrashRuns(Files.createTempDirectory("crash-runs-"));
        crashes.run(seed, runs);
        System.out.println(crashes.words(runs));
        System.exit(0);
    }
}
