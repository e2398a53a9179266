package afterlength.start.demo;

import java.util.List;

/**
 * Varnish over wood: each colour of light is weakened by its own share per layer thickness (law of Bouguer and Lambert), so thin
 * and worn places are lighter and yellower, thick ones darker and redder. Dirt lies in hollows and where nobody wipes.
 *
 * @param dirt 0 clean to 1 never cleaned
 */
record Varnish(double red, double green, double blue, List<Wear> worn, double dirt, Noise noise) {

    /** Lays the varnish over a wood whose distance to the edge is known. */
    void cover(double x_mm, double y_mm, double edge_mm, Colour wood) {
        double cloud = noise.cloud(x_mm / 38, y_mm / 46);
        double wear = wearAt(x_mm, y_mm, edge_mm, cloud);
        double layer = (1 + 0.17 * cloud + 0.06 * noise.at(x_mm / 6, y_mm / 40)) * (1 - 0.72 * wear);
        wood.red *= Math.exp(-red * layer);
        wood.green *= Math.exp(-green * layer);
        wood.blue *= Math.exp(-blue * layer);
        wood.gloss *= 1 - 0.75 * wear;
        // Bare wood turns grey from hands.
        wood.times(wear < 0.01 ? 1 : 1 - 0.22 * wear * (0.5 + 0.5 * noise.at(x_mm * 1.5, y_mm * 0.4)));
    }

    private double wearAt(double x_mm, double y_mm, double edge_mm, double cloud) {
        double wear = edge_mm > 4 ? 0 : Math.exp(-edge_mm * edge_mm / 2.2) * 0.5 * (1 + cloud);
        for (Wear place : worn) {
            double reach = place.at(x_mm, y_mm);
            wear += reach <= 0 ? 0 : smooth((reach + rough(x_mm, y_mm, cloud) - 0.22) * 1.15) * place.depth();
        }
        return Math.min(wear, 0.94);
    }

    /** What frays the rim of a worn place. */
    private double rough(double x_mm, double y_mm, double cloud) {
        return 0.31 * cloud + 0.21 * noise.at(x_mm / 5, y_mm / 9) + 0.08 * noise.at(x_mm * 1.3, y_mm * 0.5);
    }

    /** Darkening by dirt: 1 is clean. */
    double dirtAt(double x_mm, double y_mm, double hollow) {
        double spots = Math.max(0, noise.cloud(x_mm / 13 + 50, y_mm / 17));
        return 1 - dirt * (0.36 * hollow + 0.30 * spots * spots + 0.08);
    }

    private static double smooth(double share) {
        double kept = Math.min(Math.max(share, 0), 1);
        return kept * kept * (3 - 2 * kept);
    }
}
