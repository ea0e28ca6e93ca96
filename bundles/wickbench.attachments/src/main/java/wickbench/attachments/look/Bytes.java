package wickbench.attachments.look;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Bytes read forward; an end that comes too early is {@link Unfit#CUT_SHORT}. Numbers are big-endian. */
final class Bytes {
    private static final int BUFFER = 1 << 16;
    private final InputStream in;

    Bytes(InputStream in) {
        this.in = new BufferedInputStream(in, BUFFER);
    }

    boolean atEnd() throws IOException {
        in.mark(1);
        int next = in.read();
        in.reset();
        return next < 0;
    }

    int one() throws IOException, Unfit {
        int next = in.read();
        if (next < 0) {
            throw new Unfit(Unfit.CUT_SHORT);
        }
        return next;
    }

    int two() throws IOException, Unfit {
        return one() << 8 | one();
    }

    int four() throws IOException, Unfit {
        return two() << 16 | two();
    }

    byte[] take(int count) throws IOException, Unfit {
        byte[] taken = in.readNBytes(count);
        if (taken.length < count) {
            throw new Unfit(Unfit.CUT_SHORT);
        }
        return taken;
    }

    void skip(int count) throws IOException, Unfit {
        try {
            in.skipNBytes(count);
        } catch (java.io.EOFException e) {
            throw new Unfit(Unfit.CUT_SHORT);
        }
    }

    /** Reads some bytes into a buffer of the caller; returns how many. */
    int some(byte[] buffer, int most) throws IOException, Unfit {
        int read = in.read(buffer, 0, most);
        if (read < 0) {
            throw new Unfit(Unfit.CUT_SHORT);
        }
        return read;
    }
}
