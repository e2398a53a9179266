package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.start.document.AnswerDocument;
import afterlength.start.document.Reply;
import afterlength.workshop.ledger.Backup;
import java.util.List;

/** What the commands that keep and restore say on standard output. */
final class BackupReply {
    private BackupReply() {}

    static Reply made(Backup backup, List<String> faults) {
        if (!faults.isEmpty()) {
            return new Reply.Refused(faults.stream()
                    .limit(20)
                    .map(fault -> new Problem(
                            "", backup.folder().toString(), "The backup was kept, but its trial found: " + fault + "."))
                    .toList());
        }
        return new Reply.Answered(new AnswerDocument()
                .put("backup", backup.folder().toString())
                .put("made", backup.sheet().madeAt().toString())
                .put(
                        "rows",
                        backup.sheet().rows().values().stream()
                                .mapToInt(Math::toIntExact)
                                .sum())
                .put("files", backup.sheet().files().size())
                .put("trial", "restored for trial and found whole"));
    }
}
