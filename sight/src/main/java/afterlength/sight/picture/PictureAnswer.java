package afterlength.sight.picture;

/** A picture, or the reason in plain words why there is none. */
public sealed interface PictureAnswer permits Picture, PictureRefused {}
