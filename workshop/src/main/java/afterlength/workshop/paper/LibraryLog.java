package afterlength.workshop.paper;

import com.openhtmltopdf.util.XRLog;
import java.util.logging.Level;

/** Keeps the page-setting library from telling about every font it opens; its warnings still reach the log. */
final class LibraryLog {
    private LibraryLog() {}

    static void quieten() {
        XRLog.listRegisteredLoggers().forEach(name -> XRLog.setLevel(name, Level.WARNING));
    }
}
