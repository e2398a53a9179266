package afterlength.workshop.setup;

import afterlength.craft.setup.BowMap;
import afterlength.craft.setup.BridgeShape;
import afterlength.workshop.desk.Figures;
import java.util.List;

/** The strings on the bridge, from bass to treble, in figures; and what is unusual. */
record StringsPart(BridgeShape shape, BenchBow bow) {
    String place(int string) {
        return Figures.mm(shape.strings().get(string).bridgeY().mm(), 1);
    }

    String wood(int string) {
        return Figures.mm(shape.strings().get(string).woodHeight().mm(), 1);
    }

    String clearance(int string) {
        return Figures.mm(shape.strings().get(string).boardEndClearance().mm(), 2);
    }

    /** The least force at which this string meets its neighbours, at the distance that was typed. */
    String meets(int string) {
        return bow.findMap()
                .flatMap((BowMap map) -> BowWords.meeting(map, string))
                .orElse("–");
    }

    List<String> caveats() {
        return SetupWords.caveats(shape);
    }
}
