package afterlength.craft.varnish;

/**
 * Coats on an area: a volume spread evenly lies {@code V / A} thick when wet, and {@code wet × volume solids} when the solvent has
 * left. What soaks in, runs off and stays in the brush is left out, and a film on wood is never even. No measured thickness of the
 * varnish of an instrument was read; 10 to 60 µm is remembered. Source: docs/sources.md#film-formulas.
 *
 * @param volumeSolids_pct of the varnish, above 0 to 100
 */
public record Film(double volumeSolids_pct) {
    public Film {
        if (!(volumeSolids_pct > 0 && volumeSolids_pct <= 100)) {
            throw new IllegalArgumentException("volume solids " + volumeSolids_pct + " % do not lie between 0 and 100");
        }
    }

    /** How thick a volume lies on an area before it dries, in micrometres. */
    public static double wet_um(double volume_mL, double area_m2) {
        return volume_mL / area_m2;
    }

    public double dry_um(double wet_um) {
        return wet_um * volumeSolids_pct / 100;
    }

    /** How thick it must lie wet to be this thick dry. */
    public double wetFor_um(double dry_um) {
        return dry_um * 100 / volumeSolids_pct;
    }

    /** How much varnish a dry film takes, in millilitres, in however many coats. */
    public double volume_mL(double dry_um, double area_m2) {
        return wetFor_um(dry_um) * area_m2;
    }

    /** How far a litre goes at a dry thickness, in square metres. */
    public double coverage_m2_L(double dry_um) {
        return volumeSolids_pct * 10 / dry_um;
    }

    /** How many coats a build takes when each may lie this thick wet. */
    public int coats(double dry_um, double wetCoat_um) {
        return (int) Math.ceil(dry_um / dry_um(wetCoat_um) - 1e-9);
    }
}
