package afterlength.workshop.retouch;

import afterlength.workshop.desk.Frame;
import java.util.List;

/** One colour with the drawdowns it comes from. */
record PaletteColourPage(Frame frame, PaletteColour colour, List<PaletteFilm> films) {}
