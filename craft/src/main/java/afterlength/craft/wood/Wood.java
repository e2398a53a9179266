package afterlength.craft.wood;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The woods of a violin whose movement across the grain was read in a source, with radial and tangential coefficients per cent
 * of moisture content, valid from 6 to 14 %. Left out because no figure was read: boxwood, European willow, rosewood.
 */
@SuppressWarnings("ImmutableEnumChecker") // a Coefficient is a record of three numbers
public enum Wood {
    // docs/sources.md#wood-handbook-2010, table 13-5
    SITKA_SPRUCE("Sitka spruce", Coefficient.mean(0.00148), Coefficient.mean(0.00263)),
    ENGELMANN_SPRUCE("Engelmann spruce", Coefficient.mean(0.00130), Coefficient.mean(0.00248)),
    WHITE_SPRUCE("white spruce", Coefficient.mean(0.00130), Coefficient.mean(0.00274)),
    RED_SPRUCE("red spruce", Coefficient.mean(0.00130), Coefficient.mean(0.00274)),
    // docs/sources.md#bengtsson-2001, in the source 0.07–0.28 and 0.18–0.46 % per %
    NORWAY_SPRUCE("Norway spruce", Coefficient.spread(0.0007, 0.0028), Coefficient.spread(0.0018, 0.0046)),
    // docs/sources.md#wood-handbook-2010, table 13-5
    BIGLEAF_MAPLE("bigleaf maple", Coefficient.mean(0.00126), Coefficient.mean(0.00248)),
    SUGAR_MAPLE("sugar maple", Coefficient.mean(0.00165), Coefficient.mean(0.00353)),
    BLACK_MAPLE("black maple", Coefficient.mean(0.00165), Coefficient.mean(0.00353)),
    RED_MAPLE("red maple", Coefficient.mean(0.00137), Coefficient.mean(0.00289)),
    SILVER_MAPLE("silver maple", Coefficient.mean(0.00102), Coefficient.mean(0.00252)),
    // docs/sources.md#sycamore-sheet, in the source 0.10–0.20 and 0.22–0.30 % per %
    EUROPEAN_SYCAMORE("European sycamore", Coefficient.spread(0.0010, 0.0020), Coefficient.spread(0.0022, 0.0030)),
    // docs/sources.md#wood-handbook-2010, table 13-5
    BLACK_WILLOW("black willow", Coefficient.mean(0.00112), Coefficient.mean(0.00308)),
    PACIFIC_WILLOW("Pacific willow", Coefficient.mean(0.00099), Coefficient.mean(0.00319)),
    // docs/sources.md#ebony-sheet, total shrinkage 6.5 and 9.0 %
    AFRICAN_EBONY("African ebony", Coefficient.fromShrinkage(6.5), Coefficient.fromShrinkage(9.0));

    private final String species;
    private final Coefficient radial;
    private final Coefficient tangential;

    Wood(String species, Coefficient radial, Coefficient tangential) {
        this.species = species;
        this.radial = radial;
        this.tangential = tangential;
    }

    /** The name a person reads and writes. */
    public String species() {
        return species;
    }

    public Coefficient radial() {
        return radial;
    }

    public Coefficient tangential() {
        return tangential;
    }

    /** The coefficient of the width of a plate: radial when cut on the quarter, tangential when cut on the slab. */
    public Coefficient acrossWidth(Cut cut) {
        return switch (cut) {
            case QUARTER -> radial;
            case SLAB -> tangential;
        };
    }

    /** The wood of this name, in capitals or not. */
    public static Optional<Wood> findBySpecies(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(wood -> wood.species.toLowerCase(Locale.ROOT).equals(wanted))
                .findFirst();
    }

    public static List<String> listSpecies() {
        return Arrays.stream(values()).map(Wood::species).toList();
    }
}
