package afterlength.sight.picture;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Of what a camera noted in a JPEG (Exif, a TIFF block of directories), what may go out with the picture, as a new segment: how it
 * was held, the hour, exposure, lens and size, which measuring needs. Unreadable notes stay behind altogether.
 * Source: docs/sources.md#exif-orientation.
 */
final class OutgoingNotes {
    /** Maker, model, turn, resolution, the hour. */
    private static final Set<Integer> OF_PICTURE =
            Set.of(0x010F, 0x0110, 0x0112, 0x011A, 0x011B, 0x0128, 0x0132, 0x0213);

    /** Exposure, aperture, speed, version, hours, flash, focal lengths, colour space, pixels, sensor, zoom, white balance, lens. */
    private static final Set<Integer> OF_EXPOSURE = Set.of(
            0x829A, 0x829D, 0x8827, 0x9000, 0x9003, 0x9004, 0x9010, 0x9011, 0x9012, 0x9209, 0x920A, 0xA001, 0xA002,
            0xA003, 0xA20E, 0xA20F, 0xA210, 0xA403, 0xA404, 0xA405, 0xA432, 0xA434);

    private static final int EXPOSURE_DIRECTORY = 0x8769;
    private static final int LONG = 4;
    private static final int HEADER = 8;
    private static final int[] SIZES = {0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8};
    private static final byte[] SIGN = "Exif\0\0".getBytes(StandardCharsets.ISO_8859_1);

    private final ByteBuffer tiff;

    private OutgoingNotes(ByteBuffer tiff) {
        this.tiff = tiff;
    }

    /** The whole segment with its marker; empty when there is nothing to tell. */
    static byte[] of(byte[] jpeg) {
        try {
            return findTiff(jpeg).map(tiff -> new OutgoingNotes(tiff).segment()).orElse(new byte[0]);
        } catch (BufferUnderflowException | IndexOutOfBoundsException | IllegalArgumentException unreadable) {
            return new byte[0];
        }
    }

    private static Optional<ByteBuffer> findTiff(byte[] jpeg) {
        ByteBuffer from = ByteBuffer.wrap(jpeg);
        int at = 2;
        while ((from.getShort(at) & 0xFFF0) == 0xFFE0) {
            int length = from.getShort(at + 2) & 0xFFFF;
            if ((from.get(at + 1) & 0xFF) == 0xE1
                    && new String(jpeg, at + 4, 6, StandardCharsets.ISO_8859_1).equals("Exif\0\0")) {
                ByteBuffer tiff = from.slice(at + 10, length - 8);
                return Optional.of(tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN));
            }
            at += 2 + length;
        }
        return Optional.empty();
    }

    private byte[] segment() {
        Map<Integer, Note> picture = directory(tiff.getInt(4), OF_PICTURE);
        Map<Integer, Note> exposure = findPointer(tiff.getInt(4))
                .map(at -> directory(at, OF_EXPOSURE))
                .orElse(Map.of());
        if (picture.isEmpty() && exposure.isEmpty()) {
            return new byte[0];
        }
        byte[] block = block(picture, exposure);
        byte[] segment = new byte[4 + SIGN.length + block.length];
        ByteBuffer.wrap(segment)
                .putShort((short) 0xFFE1)
                .putShort((short) (2 + SIGN.length + block.length))
                .put(SIGN)
                .put(block);
        return segment;
    }

    /** One entry of a directory; its value holds the bytes as they stand in the block. */
    private record Note(int kind, int count, ByteBuffer value) {
        int size() {
            return value.capacity();
        }
    }

    private Map<Integer, Note> directory(int at, Set<Integer> wanted) {
        Map<Integer, Note> notes = new TreeMap<>();
        int entries = tiff.getShort(at) & 0xFFFF;
        for (int n = 0; n < entries; n++) {
            int entry = at + 2 + 12 * n;
            int tag = tiff.getShort(entry) & 0xFFFF;
            int kind = tiff.getShort(entry + 2) & 0xFFFF;
            int count = tiff.getInt(entry + 4);
            if (wanted.contains(tag) && kind < SIZES.length && count > 0 && count < 256) {
                notes.put(tag, new Note(kind, count, value(entry, SIZES[kind] * count)));
            }
        }
        return notes;
    }

    private ByteBuffer value(int entry, int size) {
        byte[] value = new byte[size];
        tiff.get(size <= 4 ? entry + 8 : tiff.getInt(entry + 8), value);
        return ByteBuffer.wrap(value);
    }

    private Optional<Integer> findPointer(int at) {
        int entries = tiff.getShort(at) & 0xFFFF;
        for (int n = 0; n < entries; n++) {
            if ((tiff.getShort(at + 2 + 12 * n) & 0xFFFF) == EXPOSURE_DIRECTORY) {
                return Optional.of(tiff.getInt(at + 2 + 12 * n + 8));
            }
        }
        return Optional.empty();
    }

    /** Header, the picture's directory with its values, then that of the exposure. */
    private byte[] block(Map<Integer, Note> picture, Map<Integer, Note> exposure) {
        Map<Integer, Note> first = new TreeMap<>(picture);
        if (!exposure.isEmpty()) {
            first.put(EXPOSURE_DIRECTORY, new Note(LONG, 1, number(0)));
            first.put(EXPOSURE_DIRECTORY, new Note(LONG, 1, number(HEADER + size(first))));
        }
        byte[] block = new byte[HEADER + size(first) + (exposure.isEmpty() ? 0 : size(exposure))];
        ByteBuffer out = ByteBuffer.wrap(block).order(tiff.order());
        out.put((tiff.order() == ByteOrder.LITTLE_ENDIAN ? "II" : "MM").getBytes(StandardCharsets.ISO_8859_1));
        out.putShort((short) 42).putInt(HEADER);
        write(first, out);
        if (!exposure.isEmpty()) {
            write(exposure, out.position(HEADER + size(first)));
        }
        return block;
    }

    private static int size(Map<Integer, Note> notes) {
        return 6
                + 12 * notes.size()
                + notes.values().stream().mapToInt(OutgoingNotes::apart).sum();
    }

    /** Bytes of a value that does not fit into its entry, to an even number. */
    private static int apart(Note note) {
        return note.size() <= 4 ? 0 : note.size() + note.size() % 2;
    }

    private static void write(Map<Integer, Note> notes, ByteBuffer out) {
        int values = out.position() + 6 + 12 * notes.size();
        out.putShort((short) notes.size());
        for (Map.Entry<Integer, Note> entry : notes.entrySet()) {
            Note note = entry.getValue();
            out.putShort(entry.getKey().shortValue())
                    .putShort((short) note.kind())
                    .putInt(note.count());
            if (note.size() <= 4) {
                out.put(note.value().duplicate()).position(out.position() + 4 - note.size());
            } else {
                out.putInt(values);
                out.put(values, note.value(), 0, note.size());
                values += apart(note);
            }
        }
    }

    private ByteBuffer number(int value) {
        return ByteBuffer.wrap(new byte[4]).order(tiff.order()).putInt(0, value);
    }
}
