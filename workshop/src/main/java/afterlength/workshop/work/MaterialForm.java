package afterlength.workshop.work;

import afterlength.workshop.desk.Typed;
import java.util.Map;

/** Reads a material from what was typed. */
final class MaterialForm {
    private MaterialForm() {}

    static Material read(Typed typed, long id, int version) {
        String name = typed.required("name", "The material's name", 120);
        return new Material(
                id,
                name.isBlank() ? "?" : name,
                typed.text("kind", "The kind", 60),
                typed.text("batch", "The batch", 80),
                typed.text("reversible_with", "What undoes it", 300),
                typed.text("remark", "The remark", 2000),
                false,
                version);
    }

    static Map<String, String> typedOf(Material material) {
        return Map.of(
                "name", material.name(),
                "kind", material.kind(),
                "batch", material.batch(),
                "reversible_with", material.reversibleWith(),
                "remark", material.remark(),
                "version", Integer.toString(material.version()));
    }
}
