package afterlength.workshop.climate;

import afterlength.craft.air.AirRecord;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Keeps logger files and their readings. A file can be put away and taken back; nothing of it is ever changed. */
public final class ClimateStore {
    /** Air read within an hour is the air of the moment; a room changes little in less. Common practice. */
    static final long NEAR_S = 3600;

    private static final int PARTS = 10;
    private static final int ENOUGH_PARTS = 8;

    private static final int AT_ONCE = 5000;

    private final Ledger ledger;

    public ClimateStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public AirFile add(AirFile file, AirRecord record) {
        return ledger.write(handle -> {
            long id = handle.createUpdate("""
                            INSERT INTO air_file (name, sha256, place, row_count, readings, from_s, to_s, rejected, notes, hand, taken_at)
                            VALUES (:name, :sha256, :place, :rowCount, :readings, :fromS, :toS, :rejected, :notes, :hand, :takenAt)
                            """)
                    .bindMethods(file)
                    .executeAndReturnGeneratedKeys("id")
                    .mapTo(Long.class)
                    .one();
            addReadings(handle, id, record);
            return get(handle, id);
        });
    }

    /** Straight to the driver, since there may be a million rows. */
    private static void addReadings(Handle handle, long fileId, AirRecord record) {
        try (PreparedStatement insert = handle.getConnection()
                .prepareStatement(
                        "INSERT INTO air_reading (at_s, file_id, temperature_c, humidity_pct) VALUES (?, ?, ?, ?)")) {
            for (int n = 0; n < record.size(); n++) {
                insert.setLong(1, record.moment_s(n));
                insert.setLong(2, fileId);
                insert.setDouble(3, thousandths(record.temperature_C(n)));
                insert.setDouble(4, thousandths(record.humidity_pct(n)));
                insert.addBatch();
                if (n % AT_ONCE == AT_ONCE - 1) {
                    insert.executeBatch();
                }
            }
            insert.executeBatch();
        } catch (SQLException broken) {
            throw new IllegalStateException("readings could not be written", broken);
        }
    }

    /** A logger gives three decimals at most; more are an echo of how numbers are held. */
    private static double thousandths(double value) {
        return Math.rint(value * 1000) / 1000;
    }

    public List<AirFile> list() {
        return list(false);
    }

    public List<AirFile> listPutAway() {
        return list(true);
    }

    private List<AirFile> list(boolean away) {
        return ledger.read(handle -> handle.createQuery(
                        "SELECT * FROM air_file WHERE put_away = :away ORDER BY to_s DESC, id DESC")
                .bind("away", away)
                .mapTo(AirFile.class)
                .list());
    }

    public AirFile get(long id) {
        return ledger.read(handle -> get(handle, id));
    }

    private static AirFile get(Handle handle, long id) {
        return handle.createQuery("SELECT * FROM air_file WHERE id = :id")
                .bind("id", id)
                .mapTo(AirFile.class)
                .findOne()
                .orElseThrow(() -> new NotHere("logger file", id));
    }

    /** A file of these bytes from this place that stands in the record already. */
    public Optional<AirFile> findSame(String sha256, String place) {
        return list().stream()
                .filter(file -> file.sha256().equals(sha256) && file.place().equals(place))
                .findFirst();
    }

    public void putAway(long id, boolean away) {
        ledger.change(handle -> handle.createUpdate("UPDATE air_file SET put_away = :away WHERE id = :id")
                .bind("away", away)
                .bind("id", id)
                .execute());
    }

    /** Where loggers hang, the place with the newest reading first. */
    public List<String> listPlaces() {
        return list().stream().map(AirFile::place).distinct().toList();
    }

    /** All readings of a place since a moment; where files overlap the newer file holds. */
    public AirRecord record(String place, Instant since) {
        return ledger.read(handle -> {
            Readings readings = new Readings();
            handle.createQuery("""
                            SELECT r.at_s, r.temperature_c, r.humidity_pct FROM air_reading r JOIN air_file f ON f.id = r.file_id
                            WHERE r.at_s >= :since AND f.put_away = 0 AND f.place = :place ORDER BY r.at_s, r.file_id DESC
                            """)
                    .bind("since", since.getEpochSecond())
                    .bind("place", place)
                    .map((row, context) -> readings.add(
                            row.getLong("at_s"), row.getFloat("temperature_c"), row.getFloat("humidity_pct")))
                    .forEach(added -> {});
            return readings.record();
        });
    }

    /** What a logger read nearest to this moment, within an hour. */
    public Optional<LoggedAir> findNear(Instant moment) {
        return ledger.read(handle -> handle.createQuery("""
                        SELECT r.at_s, f.place, r.temperature_c, r.humidity_pct FROM air_reading r JOIN air_file f ON f.id = r.file_id
                        WHERE r.at_s BETWEEN :moment - :near AND :moment + :near AND f.put_away = 0
                        ORDER BY abs(r.at_s - :moment), r.file_id DESC LIMIT 1
                        """)
                .bind("moment", moment.getEpochSecond())
                .bind("near", NEAR_S)
                .map((row, context) -> new LoggedAir(
                        Instant.ofEpochSecond(row.getLong("at_s")),
                        row.getString("place"),
                        row.getDouble("temperature_c"),
                        row.getDouble("humidity_pct")))
                .findOne());
    }

    /**
     * The mean of what the logger read that covers a time best; empty when none has readings in at least eight of its ten parts, for
     * a gap would be passed over in silence.
     */
    public Optional<LoggedAir> findMean(Instant from, Instant to) {
        long tenth_s = Math.max(1, (to.getEpochSecond() - from.getEpochSecond()) / PARTS);
        return ledger.read(handle -> handle.createQuery("""
                        SELECT f.place, avg(r.temperature_c) AS temperature_c, avg(r.humidity_pct) AS humidity_pct,
                          count(DISTINCT min((r.at_s - :from) / :tenth, :parts - 1)) AS parts
                        FROM air_reading r JOIN air_file f ON f.id = r.file_id
                        WHERE r.at_s BETWEEN :from AND :to AND f.put_away = 0
                        GROUP BY f.place HAVING parts >= :enough ORDER BY parts DESC LIMIT 1
                        """)
                .bind("from", from.getEpochSecond())
                .bind("to", to.getEpochSecond())
                .bind("tenth", tenth_s)
                .bind("parts", PARTS)
                .bind("enough", ENOUGH_PARTS)
                .map((row, context) -> new LoggedAir(
                        to, row.getString("place"), row.getDouble("temperature_c"), row.getDouble("humidity_pct")))
                .findOne());
    }

    /** Rows in the order of time, of one moment the first only. */
    private static final class Readings {
        private long[] moment_s = new long[1024];
        private float[] t_C = new float[1024];
        private float[] rh_pct = new float[1024];
        private int count;

        boolean add(long at_s, float temperature_C, float humidity_pct) {
            if (count > 0 && moment_s[count - 1] == at_s) {
                return false;
            }
            if (count == moment_s.length) {
                moment_s = Arrays.copyOf(moment_s, 2 * count);
                t_C = Arrays.copyOf(t_C, 2 * count);
                rh_pct = Arrays.copyOf(rh_pct, 2 * count);
            }
            moment_s[count] = at_s;
            t_C[count] = temperature_C;
            rh_pct[count] = humidity_pct;
            count++;
            return true;
        }

        AirRecord record() {
            return AirRecord.of(
                    Arrays.copyOf(moment_s, count), Arrays.copyOf(t_C, count), Arrays.copyOf(rh_pct, count));
        }
    }
}
