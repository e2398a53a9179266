package afterlength.sight.rendered;

import afterlength.sight.picture.CameraNotes;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** A camera's notes as the bytes of a TIFF (CIPA DC-008): two directories, and behind them what does not fit into an entry. */
final class ExifNotes {
    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int ENTRY = 12;

    private record Entry(int tag, int kind, int count, int value, List<Byte> behind) {}

    private final List<Entry> main = new ArrayList<>();
    private final List<Entry> more = new ArrayList<>();

    static byte[] of(CameraNotes notes, int orientation) {
        ExifNotes exif = new ExifNotes();
        int space = notes.camera().indexOf(' ');
        exif.main.add(text(0x010F, notes.camera().substring(0, space)));
        exif.main.add(text(0x0110, notes.camera().substring(space + 1)));
        exif.main.add(number(0x0112, SHORT, orientation << 16));
        exif.more.add(rational(0x920A, notes.focal_mm()));
        exif.more.add(number(0xA002, LONG, notes.width_px()));
        exif.more.add(number(0xA003, LONG, notes.height_px()));
        exif.more.add(rational(0xA404, notes.zoom()));
        exif.more.add(number(0xA405, SHORT, (int) Math.round(notes.focal35_mm()) << 16));
        if (!notes.lens().isEmpty()) {
            exif.more.add(text(0xA434, notes.lens()));
        }
        return exif.bytes();
    }

    private static Entry number(int tag, int kind, int value) {
        return new Entry(tag, kind, 1, value, List.of());
    }

    private static Entry text(int tag, String text) {
        byte[] bytes = (text + "\0\0\0\0\0").getBytes(StandardCharsets.ISO_8859_1);
        return new Entry(tag, 2, text.length() + 1, 0, list(bytes));
    }

    private static Entry rational(int tag, double value) {
        byte[] bytes = ByteBuffer.allocate(8)
                .putInt((int) Math.round(value * 100))
                .putInt(100)
                .array();
        return new Entry(tag, 5, 1, 0, list(bytes));
    }

    private static List<Byte> list(byte[] bytes) {
        List<Byte> list = new ArrayList<>();
        for (byte one : bytes) {
            list.add(one);
        }
        return list;
    }

    private byte[] bytes() {
        int moreAt = 8 + size(main.size() + 1);
        int behindAt = moreAt + size(more.size());
        main.add(number(0x8769, LONG, moreAt));
        ByteBuffer behind = ByteBuffer.allocate(1000);
        ByteBuffer tiff = ByteBuffer.allocate(behindAt + 1000);
        tiff.put("MM\0*".getBytes(StandardCharsets.ISO_8859_1)).putInt(8);
        put(main, tiff, behind, behindAt);
        put(more, tiff, behind, behindAt);
        tiff.put(behind.array(), 0, behind.position());
        byte[] whole = new byte[tiff.position()];
        tiff.get(0, whole);
        return whole;
    }

    private static int size(int entries) {
        return 2 + ENTRY * entries + 4;
    }

    private static void put(List<Entry> directory, ByteBuffer tiff, ByteBuffer behind, int behindAt) {
        tiff.putShort((short) directory.size());
        for (Entry entry : directory) {
            boolean within = entry.behind().isEmpty();
            tiff.putShort((short) entry.tag()).putShort((short) entry.kind()).putInt(entry.count());
            tiff.putInt(within ? entry.value() : behindAt + behind.position());
            entry.behind().forEach(behind::put);
        }
        tiff.putInt(0);
    }
}
