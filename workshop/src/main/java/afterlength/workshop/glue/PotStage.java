package afterlength.workshop.glue;

import afterlength.craft.glue.PotTimes;

/** What a batch does at a time. */
public enum PotStage {
    SOAKING("soaks", "Soak it", "Soaked: warm it"),
    WARMING("warms", "Warm it", "Warm: look at it"),
    HOT("is in use", "It is hot and in use", "Its working day is over: make fresh"),
    COLD("stands sealed in the cold", "Seal it and put it in the cold", "Kept long enough: smell it, or make fresh"),
    ENDED("is finished", "It is used up or thrown away", "");

    private final String words;
    private final String doing;
    private final String due;

    PotStage(String words, String doing, String due) {
        this.words = words;
        this.doing = doing;
        this.due = due;
    }

    public String words() {
        return words;
    }

    /** On the button. */
    String doing() {
        return doing;
    }

    /** What is to be done when its time is over. */
    public String due() {
        return due;
    }

    PotTimes times(boolean flakes) {
        return switch (this) {
            case SOAKING -> flakes ? PotTimes.SOAK_FLAKES : PotTimes.SOAK_GROUND;
            case WARMING -> PotTimes.WARM;
            case HOT, ENDED -> PotTimes.USE_HOT;
            case COLD -> PotTimes.KEEP_COLD;
        };
    }
}
