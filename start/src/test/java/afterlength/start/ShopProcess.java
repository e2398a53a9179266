package afterlength.start;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The program itself as a process of its own, over one shop folder, for tests that end it the hard way. */
final class ShopProcess implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:\\d+/");
    private static final int LONGEST_START_S = 120;

    private final Process process;
    private final Queue<String> said = new ConcurrentLinkedQueue<>();
    private final CompletableFuture<String> address = new CompletableFuture<>();

    private ShopProcess(Process process) {
        this.process = process;
        Thread listening = new Thread(this::listen, "what the program says");
        listening.setDaemon(true);
        listening.start();
    }

    /** Starts it as {@code ./afterlength} does, on any free port. */
    static ShopProcess start(Path shop, String... before) throws IOException {
        return start(shop, List.of(before), List.of());
    }

    /**
     * Starts it.
     *
     * @param before a program that starts ours under other rules, such as {@code prlimit --fsize=…}
     * @param options for the Java machine
     */
    static ShopProcess start(Path shop, List<String> before, List<String> options) throws IOException {
        List<String> command = new ArrayList<>(before);
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xshare:auto"));
        command.add("-Djava.awt.headless=true");
        command.addAll(options);
        String classes = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        command.addAll(List.of("-cp", classes, "afterlength.start.Main"));
        command.addAll(List.of("--shop", shop.toString(), "--port", "0", "--no-browser"));
        return new ShopProcess(
                new ProcessBuilder(command).redirectErrorStream(true).start());
    }

    private void listen() {
        try (BufferedReader lines = process.inputReader(StandardCharsets.UTF_8)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                said.add(line);
                Matcher found = ADDRESS.matcher(line);
                if (found.find()) {
                    address.complete(found.group());
                }
            }
        } catch (IOException ended) {
            said.add(String.valueOf(ended.getMessage()));
        }
        address.completeExceptionally(new IOException("the program ended without saying its address:\n" + said()));
    }

    /** Waits for the address; fails with what the program said when it ends before. */
    String address() throws IOException {
        try {
            return address.get(LONGEST_START_S, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException(stopped);
        } catch (ExecutionException | TimeoutException none) {
            throw new IOException(none);
        }
    }

    String said() {
        return String.join("\n", said);
    }

    int exit() throws InterruptedException {
        return process.waitFor();
    }

    boolean alive() {
        return process.isAlive();
    }

    /** SIGKILL: no hook runs, nothing is flushed. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    long pid() {
        return process.pid();
    }

    /** How many file handles it holds, where the system tells. */
    int handles() {
        String[] open = new File("/proc/" + process.pid() + "/fd").list();
        return open == null ? 0 : open.length;
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
