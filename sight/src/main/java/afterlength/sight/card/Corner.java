package afterlength.sight.card;

import afterlength.craft.geometry.Point;

/** A corner between four squares: whose board, which of its corners, and where it lies on the card. */
public record Corner(int board, int index, Point place) {}
