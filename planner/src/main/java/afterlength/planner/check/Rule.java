package afterlength.planner.check;

/** What a plan has to keep to. */
public enum Rule {
    COMPLETE("every step has its place in the plan"),
    BEGUN_STAYS("what was begun stays where it is"),
    NOT_BEFORE("nothing begins before now or before the instrument is there"),
    RIGHT_PERSON("a step is done by somebody who may do it"),
    SAME_PERSON("the pieces of one step are done by the same person"),
    IN_HOURS("hands work inside one stretch of working hours"),
    ONE_THING_AT_A_TIME("a person does one thing at a time"),
    ONE_ON_INSTRUMENT("only one step at a time holds the instrument"),
    ORDER("a step begins when those before it have ended, their wait included"),
    RECOAT_WINDOW("a step follows within its longest time"),
    CLAMPS("there are enough clamps"),
    CUPBOARD("there is room in the drying cupboard"),
    HOT_GLUE("hot glue is used inside one half-day, after warming up");

    private final String words;

    Rule(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
