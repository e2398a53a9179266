package afterlength.start.demo;

/**
 * A colour being mixed: three shares of linear light, and how glossy the place is. One object serves a whole picture, so it can
 * be changed.
 */
final class Colour {
    double red;
    double green;
    double blue;
    double gloss;

    void set(double newRed, double newGreen, double newBlue, double newGloss) {
        red = newRed;
        green = newGreen;
        blue = newBlue;
        gloss = newGloss;
    }

    void times(double factor) {
        red *= factor;
        green *= factor;
        blue *= factor;
    }

    void towards(double otherRed, double otherGreen, double otherBlue, double share) {
        red += (otherRed - red) * share;
        green += (otherGreen - green) * share;
        blue += (otherBlue - blue) * share;
    }

    int rgb(double brightness, double shine) {
        return Light.rgb(red * brightness + shine, green * brightness + shine, blue * brightness + shine);
    }
}
