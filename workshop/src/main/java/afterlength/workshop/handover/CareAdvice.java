package afterlength.workshop.handover;

/**
 * The care advice offered for a handover, to be edited for the instrument. Humidity: docs/sources.md#teaching-notebook-weather (read:
 * 45 to 50 % advised, below 25 % called dangerous). The rest is common practice.
 */
final class CareAdvice {
    static final String OFFERED = """
            Keep it where you are comfortable yourself: neither by a radiator or window nor in a car. Air of 45 to 50 % relative humidity is usually advised; below 25 % seams and cracks may open.
            Strings stretch and the bridge leans with them. Once a week look from the side whether the bridge stands upright; if you have not been shown how to set it back, bring it.
            Change strings one at a time. If all are slack the post may fall and the bridge with it.
            Wipe rosin off with a dry soft cloth. No polish, no alcohol, no water on the varnish.
            Come back if it buzzes, if a string suddenly stands higher or lower, or if a line in the varnish looks new. An opened seam is a small job when it comes early.
            """.strip();

    private CareAdvice() {}
}
