package afterlength.start;

import java.io.IOException;
import java.util.List;

/** Shows a page in whatever browser this machine has; says so when it has none. */
final class Browser {
    private static final List<String> OPENERS = List.of("xdg-open", "chromium", "firefox", "open");

    private Browser() {}

    static void show(String address, Console console) {
        boolean screen = System.getenv("DISPLAY") != null
                || System.getenv("WAYLAND_DISPLAY") != null
                || System.getProperty("os.name").startsWith("Mac");
        if (!screen || OPENERS.stream().noneMatch(opener -> started(opener, address))) {
            console.say("No screen or browser was found here; open that address in a browser on this machine.");
        }
    }

    private static boolean started(String opener, String address) {
        try {
            new ProcessBuilder(opener, address)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return true;
        } catch (IOException notThere) {
            return false;
        }
    }
}
