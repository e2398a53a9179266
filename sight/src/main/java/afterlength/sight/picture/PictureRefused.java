package afterlength.sight.picture;

/** The file is not taken; the reason says what it is and what to do. */
public record PictureRefused(String reason) implements PictureAnswer {}
