package afterlength.workshop.backup;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The backups of the shop, the newest first. */
record BackupPage(
        Frame frame,
        String folder,
        List<BackupLine> lines,
        @Nullable Instant newestSound,
        Typed typed) {

    String answer() {
        return newestSound == null
                ? "There is no backup yet that was tried and found whole."
                : "The newest backup that was tried and found whole is of " + Days.words(newestSound) + ".";
    }
}
