package afterlength.workshop.desk;

/** One of several answers a person can choose: what is stored and what is shown. */
public record Choice(String value, String words) {}
