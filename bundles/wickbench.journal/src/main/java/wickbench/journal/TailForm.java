package wickbench.journal;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import wickbench.api.journal.StationId;

/**
 * How every line must end, compared as bytes: {@code "prev":"…","seq":N,"station":"…","v":V}}.
 *
 * <p>In canonical form these members come last, whatever the body holds. For one thread.
 */
final class TailForm {
    private static final byte[] HEX = ascii("0123456789abcdef");
    private static final byte[] PREV = ascii(",\"prev\":\"");
    private static final byte[] SEQ = ascii("\",\"seq\":");
    private final byte[] rest;
    private final byte[] form;

    TailForm(StationId station) {
        rest = ascii(",\"station\":\"" + station + "\",\"v\":");
        form = Arrays.copyOf(PREV, PREV.length + 64 + SEQ.length + 20 + rest.length);
        System.arraycopy(SEQ, 0, form, PREV.length + 64, SEQ.length);
    }

    /** Tells whether the line ends as the entry at {@code place} must that follows an entry with leaf hash {@code prev}. */
    boolean fits(byte[] buffer, int from, int length, byte[] prev, long place) {
        int at = from + length - 1;
        if (length < 2 || buffer[at] != '}') {
            return false;
        }
        while (at > from && buffer[at - 1] >= '0' && buffer[at - 1] <= '9') {
            at--;
        }
        int size = lay(prev, place);
        return at < from + length - 1 && at - size >= from && Arrays.equals(buffer, at - size, at, form, 0, size);
    }

    /** Lays out the form and returns how long it is. */
    private int lay(byte[] prev, long place) {
        byte[] target = form;
        int at = PREV.length;
        for (byte b : prev) {
            target[at] = HEX[b >> 4 & 15];
            target[at + 1] = HEX[b & 15];
            at += 2;
        }
        at = digits(place, at + SEQ.length);
        System.arraycopy(rest, 0, target, at, rest.length);
        return at + rest.length;
    }

    private int digits(long place, int at) {
        int end = at + 1;
        for (long more = place / 10; more > 0; more /= 10) {
            end++;
        }
        long left = place;
        for (int i = end - 1; i >= at; i--) {
            form[i] = (byte) ('0' + left % 10);
            left /= 10;
        }
        return end;
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
