package afterlength.workshop.archive;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** A file being unpacked; refuses to go on when it becomes far larger than what it was packed from can honestly hold. */
final class GuardedStream extends FilterInputStream {
    private final String name;
    private final long most;
    private long read;

    GuardedStream(InputStream in, String name, long packed) {
        super(in);
        this.name = name;
        most = Math.max(BagReader.SMALL_BYTES, Math.max(0, packed) * BagReader.LARGEST_PACKING);
    }

    @Override
    public int read() throws IOException {
        int value = super.read();
        count(value < 0 ? 0 : 1);
        return value;
    }

    @Override
    public int read(byte[] into, int at, int length) throws IOException {
        int got = super.read(into, at, length);
        count(Math.max(0, got));
        return got;
    }

    private void count(int more) {
        read += more;
        if (read > most) {
            throw new ArchiveRefused("“" + name + "” unpacks to more than " + BagReader.LARGEST_PACKING
                    + " times its size. No shop's files do; the archive was made to fill the disk.");
        }
    }
}
