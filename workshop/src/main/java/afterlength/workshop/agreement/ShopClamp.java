package afterlength.workshop.agreement;

import afterlength.craft.access.Clamp;

/** A clamp on the shelf that works through a sound-hole. */
public record ShopClamp(
        long id,
        String name,
        double throatMm,
        double jawLengthMm,
        double jawWidthMm,
        double jawHeightMm,
        double armMm,
        double armWidthMm,
        boolean putAway) {
    public ShopClamp {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a clamp has a name");
        }
    }

    Clamp measures() {
        return new Clamp(throatMm, jawLengthMm, jawWidthMm, jawHeightMm, armMm, armWidthMm);
    }
}
