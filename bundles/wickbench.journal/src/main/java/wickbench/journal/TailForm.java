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

    private int lay(byte[] prev, long place) {
        int at = PREV.length;
        for (byte b : prev) {
            form[at++] = HEX[b >> 4 & 15];
            form[at++] = HEX[b & 15];
        }
        at += SEQ.length;
        byte[] digits = ascii(Long.toString(place));
        System.arraycopy(digits, 0, form, at, digits.length);
        at += digits.length;
        System.arraycopy(rest, 0, form, at, rest.length);
        return at + rest.length;
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
