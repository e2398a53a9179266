package afterlength.workshop.archive;

/**
 * A file in an archive.
 *
 * @param path from the payload's folder on, with slashes
 * @param sha256 64 hexadecimal digits
 */
record Payload(String path, long bytes, String sha256) {}
