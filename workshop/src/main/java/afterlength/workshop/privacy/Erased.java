package afterlength.workshop.privacy;

import java.util.List;

/**
 * What an erasing did.
 *
 * @param texts how many texts were changed beside the owner's own entry
 * @param pictures how many photographs lost what their camera had noted
 * @param unreadable photographs that could not be freed of the camera's notes
 * @param backups names of backups that are still there
 */
public record Erased(int texts, int pictures, List<String> unreadable, List<String> backups) {}
