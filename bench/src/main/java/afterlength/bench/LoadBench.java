package afterlength.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Every page of a shop with 500 and with 5,000 instruments, asked of the real program in a process of its own: what nineteen of
 * twenty answers keep within, how both shops compare, how long the program takes to answer first, what memory it holds.
 * Pages are found by following links; addresses that differ only in their numbers are one page. Papers are left out.
 */
public final class LoadBench {
    private static final int[] SIZES = {500, 5000};
    private static final int PORT = 4199;
    private static final int REQUESTS = 40;
    private static final int WARM_UPS = 10;
    private static final int ADDRESSES_PER_PAGE = 12;
    private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)\"");
    private static final List<String> SEARCHES =
            List.of("/instruments?find=crack", "/instruments?find=viola", "/instruments?find=worn+edge");

    private final HttpClient client = HttpClient.newHttpClient();

    private LoadBench() {}

    public static void main(String[] arguments) throws IOException, InterruptedException, SQLException {
        List<Map<String, Double>> answers = new ArrayList<>();
        for (int size : SIZES) {
            answers.add(new LoadBench().measure(size));
        }
        Map<String, Double> few = answers.get(0);
        Map<String, Double> many = answers.get(1);
        System.out.printf(
                Locale.ROOT,
                "| page | 95 of 100 within, ms, %d | %d | ratio |%n|---|---|---|---|%n",
                SIZES[0],
                SIZES[1]);
        many.forEach((page, ms) -> System.out.printf(
                Locale.ROOT,
                "| `%s` | %.1f | %.1f | %.2f |%n",
                page,
                few.getOrDefault(page, Double.NaN),
                ms,
                ms / few.getOrDefault(page, Double.NaN)));
    }

    private Map<String, Double> measure(int instruments) throws IOException, InterruptedException, SQLException {
        Path folder = Files.createTempDirectory("afterlength-load-");
        program(List.of(
                        "demo",
                        "--no-browser",
                        "--shop",
                        folder.toString(),
                        "--papers",
                        folder.resolve("papers").toString()))
                .waitFor();
        BigShop.grow(folder, instruments);
        long begin = System.nanoTime();
        Process program =
                program(List.of("--no-browser", "--shop", folder.toString(), "--port", Integer.toString(PORT)));
        try {
            waitForFirstPage(program);
            double first_s = (System.nanoTime() - begin) / 1e9;
            Map<String, List<String>> pages = crawl();
            Map<String, Double> slow_ms = new TreeMap<>();
            for (Map.Entry<String, List<String>> page : pages.entrySet()) {
                slow_ms.put(page.getKey(), slow_ms(page.getValue()));
            }
            slow_ms.put("search", slow_ms(SEARCHES));
            System.out.printf(
                    Locale.ROOT,
                    "%d instruments: first page after %.1f s, %d pages, resident memory at most %s%n",
                    instruments,
                    first_s,
                    pages.size(),
                    peakMemory(program));
            return slow_ms;
        } finally {
            program.destroy();
            program.waitFor();
        }
    }

    private static Process program(List<String> arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-Xms64m",
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                "afterlength.start.Main"));
        command.addAll(arguments);
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private void waitForFirstPage(Process program) throws InterruptedException {
        while (program.isAlive()) {
            try {
                get("/");
                return;
            } catch (IOException notYet) {
                Thread.sleep(20);
            }
        }
        throw new IllegalStateException("the program ended without a page");
    }

    private Map<String, List<String>> crawl() throws IOException, InterruptedException {
        Map<String, List<String>> pages = new HashMap<>();
        Set<String> seen = new HashSet<>(Set.of("/"));
        Deque<String> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            String address = open.poll();
            List<String> like = pages.computeIfAbsent(kind(address), kind -> new ArrayList<>());
            if (like.size() >= ADDRESSES_PER_PAGE) {
                continue;
            }
            HttpResponse<String> answer = get(address);
            boolean page =
                    answer.headers().firstValue("content-type").orElse("").startsWith("text/html");
            if (answer.statusCode() != 200 || !page) {
                pages.remove(kind(address), List.of());
                continue;
            }
            like.add(address);
            Matcher link = LINK.matcher(answer.body());
            while (link.find()) {
                String next = link.group(1).replace("&amp;", "&");
                if (!next.endsWith(".pdf") && seen.add(next)) {
                    open.add(next);
                }
            }
        }
        return pages;
    }

    private static String kind(String address) {
        return address.replaceAll("\\?.*", "?…").replaceAll("[0-9]+", "#");
    }

    private double slow_ms(List<String> addresses) throws IOException, InterruptedException {
        double[] each_ms = new double[REQUESTS];
        for (int i = -WARM_UPS; i < REQUESTS; i++) {
            long begin = System.nanoTime();
            get(addresses.get(Math.floorMod(i, addresses.size())));
            if (i >= 0) {
                each_ms[i] = (System.nanoTime() - begin) / 1e6;
            }
        }
        Arrays.sort(each_ms);
        return each_ms[(int) (0.95 * REQUESTS)];
    }

    private HttpResponse<String> get(String address) throws IOException, InterruptedException {
        URI uri = URI.create("http://127.0.0.1:" + PORT + address);
        return client.send(HttpRequest.newBuilder(uri).build(), HttpResponse.BodyHandlers.ofString());
    }

    private static String peakMemory(Process program) throws IOException {
        return Files.readAllLines(Path.of("/proc/" + program.pid() + "/status")).stream()
                .filter(line -> line.startsWith("VmHWM"))
                .map(line -> line.replaceAll("[^0-9]", ""))
                .map(kB -> Integer.parseInt(kB) / 1024 + " MB")
                .findFirst()
                .orElse("not known here");
    }
}
