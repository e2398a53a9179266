package afterlength.workshop.instrument;

import afterlength.workshop.desk.Typed;
import java.util.Map;

/** Reads an owner from what was typed. */
final class OwnerForm {
    private OwnerForm() {}

    static Owner read(Typed typed, long id, int version) {
        String name = typed.required("owner_name", "The owner's name", 120);
        return new Owner(
                id,
                name.isBlank() ? "?" : name,
                typed.text("owner_email", "The owner's e-mail", 200),
                typed.text("owner_phone", "The owner's telephone", 60),
                typed.text("owner_address", "The owner's address", 400),
                typed.text("owner_remark", "The remark", 2000),
                version);
    }

    static Map<String, String> typedOf(Owner owner) {
        return Map.of(
                "owner_name", owner.name(),
                "owner_email", owner.email(),
                "owner_phone", owner.phone(),
                "owner_address", owner.address(),
                "owner_remark", owner.remark(),
                "version", Integer.toString(owner.version()));
    }
}
