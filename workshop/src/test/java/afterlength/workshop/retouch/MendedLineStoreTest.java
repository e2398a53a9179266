package afterlength.workshop.retouch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.examination.Moment;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MendedLineStoreTest {
    @TempDir
    Path folder;

    private RetouchShop shop;
    private MendedLine written;

    @BeforeEach
    void write() throws IOException {
        shop = new RetouchShop(folder);
        long before = shop.marked(LinedPicture.plain(20, 0), Moment.BEFORE, LinedPicture.FROM, LinedPicture.TO)
                .id();
        long after = shop.marked(LinedPicture.plain(2, 0), Moment.AFTER, LinedPicture.FROM, LinedPicture.TO)
                .id();
        MendedLine line = new MendedLine(
                0,
                shop.visit.id(),
                null,
                false,
                "crack",
                sight(before, 6.25),
                sight(after, 1.5),
                RetouchShop.NOW,
                "bench");
        written = shop.lines.get(shop.lines.add(line));
    }

    private static LineSight sight(long mark, double high) {
        return new LineSight(mark, high, 0.5, high / 2, 0.75, 0.25, 12, "0.1 2.5 0.1", "1,2 3,4\n5,6 7,8", "one\ntwo");
    }

    @Test
    void whatWasReadComesBackToTheLetter() {
        assertThat(written.before()).isEqualTo(sight(written.before().markId(), 6.25));
        assertThat(written.after()).isEqualTo(sight(written.after().markId(), 1.5));
        assertThat(written.after().acrossValues()).containsExactly(0.1, 2.5, 0.1);
        assertThat(written.after().untouchedLines()).containsExactly("1,2 3,4", "5,6 7,8");
        assertThat(shop.lines.listNow(shop.visit.id())).containsExactly(written);
    }

    @Test
    void aLineTakenOutStaysInTheShop() {
        shop.lines.withdraw(written.id(), RetouchShop.NOW);
        shop.lines.withdraw(written.id(), RetouchShop.NOW);
        assertThat(shop.lines.listNow(shop.visit.id())).isEmpty();
        assertThat(shop.lines.get(written.id())).isEqualTo(written);
        assertThatThrownBy(() -> shop.lines.get(99)).isInstanceOf(NotHere.class);
    }

    @Test
    void theDatabaseKeepsHistory() {
        for (String change : new String[] {
            "UPDATE mended_line SET place = 'x'",
            "DELETE FROM mended_line",
            "UPDATE mended_line_sight SET high = 0",
            "DELETE FROM mended_line_sight"
        }) {
            assertThatThrownBy(() -> shop.ledger.change(handle -> handle.execute(change)))
                    .hasStackTraceContaining("history is kept");
        }
    }
}
