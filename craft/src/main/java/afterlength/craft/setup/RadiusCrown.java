package afterlength.craft.setup;

/** A circular arc with its centre below the crown. */
public record RadiusCrown(double radius_mm) implements Crown {}
