package afterlength.workshop.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The fingerprint by which files are named and known again, as 64 hexadecimal digits. */
final class Sha256 {
    private Sha256() {}

    static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    static String of(InputStream bytes) throws IOException {
        MessageDigest sha256 = digest();
        try (DigestInputStream counted = new DigestInputStream(bytes, sha256)) {
            counted.transferTo(OutputStream.nullOutputStream());
        }
        return hex(sha256);
    }

    static String hex(MessageDigest sha256) {
        return HexFormat.of().formatHex(sha256.digest());
    }
}
