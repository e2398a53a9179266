package afterlength.workshop.desk;

import java.util.List;
import java.util.Map;

/**
 * What a page says when it cannot be shown.
 *
 * @param again where what was typed may be sent once more; empty when that would not help
 * @param typed what was typed, field by field
 */
record RefusalPage(Frame frame, String reason, String again, List<Map.Entry<String, String>> typed) {
    RefusalPage(Frame frame, String reason) {
        this(frame, reason, "", List.of());
    }
}
