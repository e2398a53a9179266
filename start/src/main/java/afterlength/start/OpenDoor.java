package afterlength.start;

import afterlength.workshop.desk.Desk;

/** A shop that is open: says where, shows it, and stays until the person ends the program. */
final class OpenDoor {
    private final Desk desk;
    private final boolean browser;
    private final Console console;

    OpenDoor(Desk desk, boolean browser, Console console) {
        this.desk = desk;
        this.browser = browser;
        this.console = console;
    }

    int standOpen() {
        Runtime.getRuntime().addShutdownHook(new Thread(desk::close));
        console.say("The shop is open at " + desk.address()
                + " on this machine. End with Ctrl-C; everything is saved as you work.");
        if (browser) {
            Browser.show(desk.address(), console);
        }
        try {
            Thread.currentThread().join();
            return Exit.ANSWERED;
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return Exit.ANSWERED;
        }
    }
}
