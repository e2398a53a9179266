package afterlength.workshop.retouch;

import afterlength.craft.colour.ColourClass;
import afterlength.workshop.desk.Frame;
import java.util.List;

/** The palette on the shelf. */
record PalettePage(Frame frame, List<PaletteColour> colours, List<PaletteColour> putAway) {
    static ColourClass[] classes() {
        return ColourClass.values();
    }
}
