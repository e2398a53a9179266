package afterlength.craft.colour;

/** What limits a recipe. */
public enum RecipeCaveat {
    GLOSS_FIRST(
            "Gloss decides as much as pigment: half a per cent more light thrown back is a difference of 1 to 1.6. Bring level"
                    + " and gloss to the varnish beside it first; colour is judged only at equal gloss."),
    CALCULATED(
            "Calculated for even films in the strength of the drawdowns. Amounts off by 5 to 10 % are usual: lay a first coat of"
                    + " three quarters, measure, and let the rest be worked out."),
    TWO_FLUX(
            "Two-flux theory is disputed for clear coats, and wood changes with the direction of light; try it on a drawdown before"
                    + " it goes on the instrument."),
    OUT_OF_REACH(
            "None of these colorants comes within 1 of the target in daylight; the nearest is shown, not a match."),
    LIGHTS_DISAGREE(
            "It matches in daylight and differs by more than 1 under a lamp; look at it under the light it will be seen in."),
    FILM_AT_CAP("The film is as thick as it may be, and that limits the match."),
    WITHOUT_SPECTRUM(
            "Ground or target is known by its colour alone, so what happens under another light is a warning, not a number:"
                    + " 1.2 to 1.9 off is usual, 3 to 4 possible.");

    private final String text;

    RecipeCaveat(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
