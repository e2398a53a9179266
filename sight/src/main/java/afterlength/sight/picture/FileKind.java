package afterlength.sight.picture;

import java.nio.charset.StandardCharsets;

/**
 * What a file is, told from its first bytes and never from its name. The signs are those by which the formats announce
 * themselves; only the first two are taken, because every browser, printer and archive shows them.
 */
public enum FileKind {
    JPEG("a JPEG picture"),
    PNG("a PNG picture"),
    GIF("a GIF picture"),
    WEBP("a WebP picture"),
    HEIC("a HEIC picture, as some telephones make them"),
    AVIF("an AVIF picture"),
    TIFF("a TIFF picture or a camera's raw file"),
    BMP("a BMP picture"),
    PDF("a PDF document"),
    FILM("a film"),
    UNKNOWN("no kind of picture that this program knows");

    private static final int BRAND_AT = 8;
    private final String words;

    FileKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    public static FileKind of(byte[] bytes) {
        if (begins(bytes, 0, "\u00ff\u00d8\u00ff")) {
            return JPEG;
        }
        if (begins(bytes, 0, "\u0089PNG\r\n\u001a\n")) {
            return PNG;
        }
        if (begins(bytes, 0, "GIF8")) {
            return GIF;
        }
        if (begins(bytes, 0, "RIFF") && begins(bytes, BRAND_AT, "WEBP")) {
            return WEBP;
        }
        if (begins(bytes, 4, "ftyp")) {
            return ofBrand(bytes);
        }
        return ofRareSigns(bytes);
    }

    /** HEIC, AVIF and films share one container and differ in the brand it names. */
    private static FileKind ofBrand(byte[] bytes) {
        if (begins(bytes, BRAND_AT, "avi")) {
            return AVIF;
        }
        boolean heic = begins(bytes, BRAND_AT, "hei")
                || begins(bytes, BRAND_AT, "hev")
                || begins(bytes, BRAND_AT, "mif1")
                || begins(bytes, BRAND_AT, "msf1");
        return heic ? HEIC : FILM;
    }

    private static FileKind ofRareSigns(byte[] bytes) {
        if (begins(bytes, 0, "II*\0") || begins(bytes, 0, "MM\0*")) {
            return TIFF;
        }
        if (begins(bytes, 0, "BM")) {
            return BMP;
        }
        return begins(bytes, 0, "%PDF") ? PDF : UNKNOWN;
    }

    private static boolean begins(byte[] bytes, int at, String sign) {
        byte[] wanted = sign.getBytes(StandardCharsets.ISO_8859_1);
        return bytes.length >= at + wanted.length
                && java.util.Arrays.equals(bytes, at, at + wanted.length, wanted, 0, wanted.length);
    }
}
