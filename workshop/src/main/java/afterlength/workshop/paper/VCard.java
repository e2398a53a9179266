package afterlength.workshop.paper;

/**
 * A person's card, vCard 4.0 (RFC 6350). A name is kept as it was written, in FN; which of its words is the family name is not
 * guessed, since people around the world order them differently, so N holds the whole name in its first part.
 * Source: docs/sources.md#content-lines.
 */
public final class VCard {
    public static final String MEDIA_TYPE = "text/vcard; charset=utf-8";

    private VCard() {}

    /** The card as text; what is empty is left out. */
    public static String of(String uid, String name, String email, String phone, String address) {
        ContentLines lines = new ContentLines()
                .plain("BEGIN", "VCARD")
                .plain("VERSION", "4.0")
                .plain("UID", uid)
                .words("FN", name)
                .plain("N", ContentLines.escaped(name) + ";;;;");
        if (!email.isEmpty()) {
            lines.words("EMAIL", email);
        }
        if (!phone.isEmpty()) {
            lines.words("TEL;VALUE=text", phone);
        }
        if (!address.isEmpty()) {
            lines.plain("ADR", ";;" + ContentLines.escaped(address) + ";;;;");
        }
        return lines.plain("END", "VCARD").toString();
    }
}
