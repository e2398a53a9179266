package afterlength.workshop.paper;

/** The letter faces that travel with the program, so a page looks the same on every machine. */
public enum Face {
    SANS("IBM Plex Sans", 400, false, "IBMPlexSans-Regular.ttf"),
    SANS_STRONG("IBM Plex Sans", 600, false, "IBMPlexSans-SemiBold.ttf"),
    SERIF("IBM Plex Serif", 400, false, "IBMPlexSerif-Regular.ttf"),
    SERIF_ITALIC("IBM Plex Serif", 400, true, "IBMPlexSerif-Italic.ttf"),
    SERIF_STRONG("IBM Plex Serif", 600, false, "IBMPlexSerif-SemiBold.ttf"),
    /** Stands in for signs the others lack: sharps, flats, arrows. */
    SYMBOLS("DejaVu Sans", 400, false, "DejaVuSans.ttf"),
    /** Names in Chinese or Japanese; only opened for a paper that holds such signs. */
    FAR_EASTERN("Droid Sans Fallback", 400, false, "DroidSansFallbackFull.ttf");

    private final String family;
    private final int weight;
    private final boolean italic;
    private final String file;

    Face(String family, int weight, boolean italic, String file) {
        this.family = family;
        this.weight = weight;
        this.italic = italic;
        this.file = file;
    }

    String family() {
        return family;
    }

    int weight() {
        return weight;
    }

    boolean italic() {
        return italic;
    }

    String file() {
        return file;
    }
}
