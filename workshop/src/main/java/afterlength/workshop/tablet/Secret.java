package afterlength.workshop.tablet;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** What a paired tablet shows at the door, and the one-time code it got it for. */
final class Secret {
    private static final SecureRandom CHANCE = new SecureRandom();
    private static final int BYTES = 32;
    private static final int CODES = 100_000_000;

    private Secret() {}

    static String fresh() {
        byte[] bytes = new byte[BYTES];
        CHANCE.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Eight digits. */
    static String code() {
        return String.format("%08d", CHANCE.nextInt(CODES));
    }

    static String sha256(String secret) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Takes as long for a wrong guess as for a nearly right one. */
    static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
