package afterlength.workshop.agreement;

import afterlength.craft.estimate.HandsOn;

/**
 * One step of a treatment as the shop usually goes about it ({@code docs/sources.md#shop-times}).
 *
 * @param needs what it occupies, joined by {@code +}; empty when only hands
 * @param blocksInstrument whether other work on the instrument is barred during the wait
 * @param mark where the figures are from, in the source's own words
 */
public record TemplateStep(
        String name, HandsOn handsOn, Wait waiting, String needs, boolean blocksInstrument, String mark) {

    TemplateStep taking(HandsOn other) {
        return new TemplateStep(name, other, waiting, needs, blocksInstrument, mark);
    }
}
