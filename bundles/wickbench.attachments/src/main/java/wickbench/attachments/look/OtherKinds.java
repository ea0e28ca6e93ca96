package wickbench.attachments.look;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Looks for a second kind of file within the first.
 *
 * <p>A PDF reader finds its header anywhere in the first 1,024 bytes, an archive is found from its end, and a browser looks for
 * markup at the start: one file could be a harmless picture to us and something else to the program that opens it next.
 */
final class OtherKinds {
    private static final int HEAD = 1024;
    /** An archive's end record is 22 bytes and a comment of up to 65,535. */
    private static final int TAIL = 22 + 65_535;

    private static final byte[] PDF = ascii("%PDF-");
    private static final byte[] ARCHIVE_END = {'P', 'K', 5, 6};
    private static final List<byte[]> MARKUP = List.of(ascii("<html"), ascii("<script"), ascii("<!doctype html"));

    private OtherKinds() {}

    static boolean isArchive(FileChannel file) throws IOException {
        return holds(part(file, Math.max(0, file.size() - TAIL), TAIL), ARCHIVE_END);
    }

    static boolean isPdf(FileChannel file) throws IOException {
        return holds(part(file, 0, HEAD), PDF);
    }

    static boolean isMarkup(FileChannel file) throws IOException {
        byte[] head = part(file, 0, HEAD);
        for (int i = 0; i < head.length; i++) {
            head[i] = (byte) Character.toLowerCase(head[i]);
        }
        return MARKUP.stream().anyMatch(mark -> holds(head, mark));
    }

    /** Tells whether a PDF is whole: its last line stands within the last 1,024 bytes. */
    static boolean endsAsPdf(FileChannel file) throws IOException {
        return holds(part(file, Math.max(0, file.size() - HEAD), HEAD), ascii("%%EOF"));
    }

    private static byte[] part(FileChannel file, long from, int most) throws IOException {
        ByteBuffer part = ByteBuffer.allocate((int) Math.min(most, file.size() - from));
        while (part.hasRemaining() && file.read(part, from + part.position()) >= 0) {
            // reads on until the part is full
        }
        return part.array();
    }

    private static boolean holds(byte[] all, byte[] wanted) {
        for (int at = 0; at + wanted.length <= all.length; at++) {
            if (java.util.Arrays.equals(all, at, at + wanted.length, wanted, 0, wanted.length)) {
                return true;
            }
        }
        return false;
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
