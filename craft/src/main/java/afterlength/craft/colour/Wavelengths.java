package afterlength.craft.colour;

/**
 * The wavelengths at which a spectrum is given: evenly spaced, on rows of the CIE table.
 *
 * @param first_nm the shortest
 * @param step_nm from one to the next
 * @param count how many
 */
public record Wavelengths(int first_nm, int step_nm, int count) {
    public Wavelengths {
        if (first_nm < CieTable.FIRST_NM || first_nm % CieTable.STEP_NM != 0) {
            throw new IllegalArgumentException(
                    "a spectrum begins at 380 nm or later, on a multiple of 5; not at " + first_nm);
        }
        if (step_nm <= 0 || step_nm % CieTable.STEP_NM != 0 || step_nm > 20) {
            throw new IllegalArgumentException("a spectrum goes in steps of 5, 10, 15 or 20 nm; not of " + step_nm);
        }
        if (count < 3 || first_nm + (count - 1) * step_nm > CieTable.LAST_NM) {
            throw new IllegalArgumentException(
                    "a spectrum has at least 3 values and ends by 780 nm; not " + count + " values from " + first_nm);
        }
    }

    /** As many instruments give it: 380 to 730 nm by 10. */
    public static Wavelengths usual() {
        return new Wavelengths(380, 10, 36);
    }

    int at_nm(int index) {
        return first_nm + index * step_nm;
    }

    public int last_nm() {
        return at_nm(count - 1);
    }
}
