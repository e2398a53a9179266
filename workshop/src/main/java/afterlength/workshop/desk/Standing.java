package afterlength.workshop.desk;

/** A field in which somebody else's value stands by now and another was typed. */
public record Standing(String name, String now, String typed) {
    /** The field's name as a person reads it. */
    public String words() {
        return name.replace('_', ' ').replace('/', ' ');
    }

    public String nowWords() {
        return now.isBlank() ? "nothing" : "“" + now + "”";
    }

    public String typedWords() {
        return typed.isBlank() ? "nothing" : "“" + typed + "”";
    }
}
