package afterlength.workshop.archive;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;

/**
 * Building stones of Linked Art, a profile of CIDOC CRM in JSON-LD. Broad kinds carry their number in the Art & Architecture
 * Thesaurus of the Getty. Source: docs/sources.md#linked-art, docs/sources.md#aat.
 */
final class Art {
    static final String CONTEXT = "https://linked.art/ns/v1/linked-art.json";
    private static final String THESAURUS = "http://vocab.getty.edu/aat/";

    static final Map<String, Object> PRIMARY_NAME = type("300404670", "Primary Name");
    static final Map<String, Object> LOCAL_NUMBER = type("300404621", "Local Number");
    static final Map<String, Object> MEASURING = type("300053578", "measuring");
    static final Map<String, Object> EXAMINATION = type("300226216", "examination");
    static final Map<String, Object> MUSICAL_INSTRUMENT = Json.object(
            "id",
            THESAURUS + "300041620",
            "type",
            "Type",
            "_label",
            "musical instruments",
            "classified_as",
            List.of(type("300435443", "Type of Work")));
    private static final Map<String, Object> BRIEF_TEXT = type("300418049", "Brief Text");

    private Art() {}

    static Map<String, Object> type(String number, String label) {
        return Json.object("id", THESAURUS + number, "type", "Type", "_label", label);
    }

    /** A kind in the shop's own words. */
    static Map<String, Object> ownType(String label) {
        return Json.object("type", "Type", "_label", label);
    }

    static Map<String, Object> name(String content) {
        return Json.object("type", "Name", "content", content, "classified_as", List.of(PRIMARY_NAME));
    }

    static Map<String, Object> identifier(String content, Map<String, Object> kind) {
        return Json.object("type", "Identifier", "content", content, "classified_as", List.of(kind));
    }

    /** Words about something, of a kind such as “Condition Statement”. */
    static Map<String, Object> statement(String content, String number, String kind) {
        return Json.object(
                "type",
                "LinguisticObject",
                "content",
                content,
                "classified_as",
                List.of(Json.object(
                        "id",
                        THESAURUS + number,
                        "type",
                        "Type",
                        "_label",
                        kind,
                        "classified_as",
                        List.of(BRIEF_TEXT))));
    }

    static Map<String, Object> note(String content) {
        return statement(content, "300027200", "Note");
    }

    static Map<String, Object> person(String id, String label) {
        return Json.object("id", id, "type", "Person", "_label", label);
    }

    static Map<String, Object> at(Instant moment) {
        return span(moment, moment);
    }

    static Map<String, Object> on(LocalDate day) {
        Instant begin = day.atStartOfDay(ZoneOffset.UTC).toInstant();
        return span(begin, day.atTime(23, 59, 59).toInstant(ZoneOffset.UTC));
    }

    private static Map<String, Object> span(Instant begin, Instant end) {
        return Json.object(
                "type", "TimeSpan", "begin_of_the_begin", begin.toString(), "end_of_the_end", end.toString());
    }

    static Map<String, Object> unit(String unit) {
        return switch (unit) {
            case "mm" -> measure("300379097", "millimeters");
            case "g" -> measure("300379225", "grams");
            default -> Json.object("type", "MeasurementUnit", "_label", unit);
        };
    }

    private static Map<String, Object> measure(String number, String label) {
        return Json.object("id", THESAURUS + number, "type", "MeasurementUnit", "_label", label);
    }
}
