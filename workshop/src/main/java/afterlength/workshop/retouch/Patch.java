package afterlength.workshop.retouch;

import afterlength.craft.colour.Light;
import afterlength.craft.colour.Spectrum;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Patches side by side, one row for each light: what a screen can show of ground, target and recipe. */
record Patch(String name, Spectrum colour) {
    static final int WIDTH = 130;
    static final int HEIGHT = 46;
    static final int MARGIN = 195;
    static final int TOP = 22;

    static List<Patch> of(RetouchCase one, Mix mix) {
        List<Patch> patches = new ArrayList<>();
        patches.add(new Patch(
                one.begun() ? "now" : "ground", one.now().orElse(one.retouch().ground())));
        if (!one.begun()) {
            patches.add(new Patch("first coat", mix.recipe().firstCoat()));
        }
        patches.add(new Patch(
                one.begun() ? "with this coat" : "whole film", mix.recipe().result()));
        patches.add(new Patch("varnish beside", one.retouch().target()));
        return patches;
    }

    static List<Light> lights() {
        return Arrays.asList(Light.values());
    }

    String fill(Light light) {
        return Seen.hex(colour, light);
    }
}
