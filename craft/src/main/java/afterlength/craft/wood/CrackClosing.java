package afterlength.craft.wood;

import afterlength.craft.units.Length;

/**
 * Will a crack or seam close by itself when the air changes? It is asked with the gap as measured, and answered with the band of
 * {@link HeldPlate} beside it. There is no fourth answer that says it will stay closed: what the air closes, the air opens.
 */
public sealed interface CrackClosing {
    /** Even with the least movement the edges meet. */
    record Closes(HeldPlate plate) implements CrackClosing {}

    /** With the most movement the edges meet, with the least they do not. */
    record MayClose(HeldPlate plate) implements CrackClosing {}

    /** Even with the most movement a gap is left. */
    record StaysOpen(HeldPlate plate) implements CrackClosing {}

    /** The wood dries: the crack becomes wider. */
    record Widens(HeldPlate plate) implements CrackClosing {}

    static CrackClosing of(Length gap, HeldPlate plate) {
        if (!plate.closing()) {
            return new Widens(plate);
        }
        if (plate.movement_mm().low() >= gap.mm()) {
            return new Closes(plate);
        }
        return plate.movement_mm().high() >= gap.mm() ? new MayClose(plate) : new StaysOpen(plate);
    }

    HeldPlate plate();
}
