package afterlength.workshop.setup;

/** What is typed for each string. */
enum StringColumn {
    NAME("name", "name", "name", ""),
    NOTE("note", "open note", "open note such as G3, may stay empty", ""),
    DIAMETER("diameter_mm", "diameter, mm", "diameter in millimetres", "decimal"),
    TENSION("tension_N", "tension, N", "tension in newtons, may stay empty", "decimal"),
    DENSITY(
            "linear_density_g_m",
            "or mass, g/m",
            "mass per length in grams a metre, instead of the tension",
            "decimal"),
    NUT_PLACE("nut_y_mm", "at the nut, mm", "place at the nut from the centre line, minus to the bass", "decimal"),
    BRIDGE_PLACE(
            "bridge_y_mm",
            "at the bridge, mm",
            "place at the bridge from the centre line, minus to the bass",
            "decimal");

    private final String field;
    private final String heading;
    private final String spoken;
    private final String keyboard;

    StringColumn(String field, String heading, String spoken, String keyboard) {
        this.field = field;
        this.heading = heading;
        this.spoken = spoken;
        this.keyboard = keyboard;
    }

    String field() {
        return field;
    }

    String heading() {
        return heading;
    }

    String spoken() {
        return spoken;
    }

    String keyboard() {
        return keyboard;
    }

    boolean isPlace() {
        return this == NUT_PLACE || this == BRIDGE_PLACE;
    }
}
