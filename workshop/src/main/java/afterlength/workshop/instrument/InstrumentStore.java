package afterlength.workshop.instrument;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** Keeps instruments and finds them again. */
public final class InstrumentStore {
    private final Ledger ledger;

    public InstrumentStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public Instrument get(long id) {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM instrument WHERE id = :id")
                        .bind("id", id)
                        .mapTo(Instrument.class)
                        .findOne())
                .orElseThrow(() -> new NotHere("instrument", id));
    }

    /**
     * Instruments whose name, story, owner, visit number or words of a finding contain all the words asked for; all of them when
     * nothing is asked. Those in the house come first. Capitals do not matter.
     */
    public List<Listing> find(String words) {
        return find(words, Integer.MAX_VALUE).lines();
    }

    /** The first so many of them, and how many there are. */
    public Found find(String words, int most) {
        List<String> wanted =
                words.isBlank() ? List.of() : List.of(words.strip().split("\\s+"));
        // A backslash would do for SQLite, but Jdbi reads it as escaping the quotation mark behind it.
        StringBuilder sql = new StringBuilder("""
                SELECT i.id, i.name, i.kind, o.name AS owner, v.number AS visit_number, v.received_on, v.promised_on, count(*) OVER () AS in_all,
                       (v.id IS NOT NULL AND NOT EXISTS (SELECT 1 FROM handover h WHERE h.visit_id = v.id)) AS in_house,
                       :seen AS seen
                FROM instrument i JOIN owner o ON o.id = i.owner_id
                LEFT JOIN visit v ON v.id = (SELECT max(id) FROM visit WHERE instrument_id = i.id)
                WHERE 1 = 1
                """.replace(":seen", seen(wanted.size())));
        for (int n = 0; n < wanted.size(); n++) {
            sql.append("""
                    AND (i.name LIKE :wN ESCAPE '!' OR o.name LIKE :wN ESCAPE '!' OR i.label_words LIKE :wN ESCAPE '!'
                      OR i.story_told LIKE :wN ESCAPE '!' OR i.story_documented LIKE :wN ESCAPE '!' OR i.kind LIKE :wN ESCAPE '!'
                      OR EXISTS (SELECT 1 FROM visit w WHERE w.instrument_id = i.id AND w.number LIKE :wN ESCAPE '!')
                      OR EXISTS (SELECT 1 FROM finding_now f JOIN visit w ON w.id = f.visit_id WHERE w.instrument_id = i.id
                           AND (:finding)))
                    """.replace(":finding", ofFinding("wN")).replace(":wN", ":w" + n));
        }
        sql.append("ORDER BY in_house DESC, v.received_on DESC, i.id DESC LIMIT :most");
        return ledger.read(handle -> {
            var query = handle.createQuery(sql.toString()).bind("most", most);
            for (int n = 0; n < wanted.size(); n++) {
                query.bind("w" + n, "%" + LikeWords.pattern(wanted.get(n)) + "%");
            }
            return Found.of(query.mapTo(Listing.class).list());
        });
    }

    private static String ofFinding(String word) {
        return Stream.of("observation", "part", "kind", "place", "interpretation")
                .map(column -> "f." + column + " LIKE :" + word + " ESCAPE '!'")
                .collect(Collectors.joining(" OR "));
    }

    /** The first finding in which any of the words stands, as one line. */
    private static String seen(int words) {
        if (words == 0) {
            return "NULL";
        }
        String any = IntStream.range(0, words).mapToObj(n -> ofFinding("w" + n)).collect(Collectors.joining(" OR "));
        return "(SELECT f.kind || ', ' || f.part || ': ' || f.observation FROM finding_now f JOIN visit w ON w.id = f.visit_id"
                + " WHERE w.instrument_id = i.id AND (" + any + ") ORDER BY f.id LIMIT 1)";
    }

    /** Answers false, and changes nothing, when somebody else has changed the instrument meanwhile. */
    public boolean change(Instrument instrument) {
        return ledger.write(
                handle -> handle.createUpdate("""
                                UPDATE instrument SET kind = :kind, name = :name, size_words = :sizeWords,
                                  made_words = :madeWords, label_words = :labelWords, marks_words = :marksWords,
                                  body_length_mm = :bodyLengthMm, story_told = :storyTold,
                                  story_documented = :storyDocumented, unplayed_since = :unplayedSince, version = version + 1
                                WHERE id = :id AND version = :version
                                """).bindMethods(instrument).execute() == 1);
    }

    static long add(Handle handle, Instrument instrument) {
        return handle.createUpdate("""
                        INSERT INTO instrument (owner_id, kind, name, size_words, made_words, label_words, marks_words,
                          body_length_mm, story_told, story_documented, unplayed_since)
                        VALUES (:ownerId, :kind, :name, :sizeWords, :madeWords, :labelWords, :marksWords,
                          :bodyLengthMm, :storyTold, :storyDocumented, :unplayedSince)
                        """)
                .bindMethods(instrument)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
    }
}
