package afterlength.start;

/** The three ways the program ends; scripts rely on them. */
final class Exit {
    static final int ANSWERED = 0;
    static final int OUR_FAULT = 1;
    static final int REFUSED = 2;

    private Exit() {}
}
