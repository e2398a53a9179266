package afterlength.workshop.instrument;

import java.util.List;

/** The first lines of what was found, and how many there are in all. */
public record Found(List<Listing> lines, int all) {
    static Found of(List<Listing> lines) {
        return new Found(lines, lines.isEmpty() ? 0 : lines.get(0).inAll());
    }

    public boolean isCut() {
        return lines.size() < all;
    }
}
