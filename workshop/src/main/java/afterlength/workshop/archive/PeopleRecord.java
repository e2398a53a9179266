package afterlength.workshop.archive;

import afterlength.workshop.instrument.Owner;
import afterlength.workshop.paper.VCard;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;

/** Owners as Linked Art persons and as cards. */
final class PeopleRecord {
    private final Ids ids;

    PeopleRecord(Ids ids) {
        this.ids = ids;
    }

    Map<String, Object> person(Owner owner) {
        List<Object> contacts = Stream.of(
                        contact(owner.email(), "e-mail address"),
                        contact(owner.phone(), "telephone number"),
                        contact(owner.address(), "postal address"))
                .flatMap(stream -> stream)
                .toList();
        return Json.object(
                "@context",
                Art.CONTEXT,
                "id",
                ids.owner(owner.id()),
                "type",
                "Person",
                "_label",
                owner.name(),
                "identified_by",
                List.of(Art.name(owner.name())),
                "classified_as",
                List.of(Art.type("300203630", "owners")),
                "contact_point",
                contacts,
                "referred_to_by",
                owner.remark().isBlank() ? List.of() : List.of(Art.note(owner.remark())));
    }

    private static Stream<Object> contact(String content, String kind) {
        return content.isBlank() ? Stream.of() : Stream.of(Art.identifier(content, Art.ownType(kind)));
    }

    String card(Owner owner) {
        UUID number = UUID.nameUUIDFromBytes(ids.owner(owner.id()).getBytes(StandardCharsets.UTF_8));
        return VCard.of("urn:uuid:" + number, owner.name(), owner.email(), owner.phone(), owner.address());
    }
}
