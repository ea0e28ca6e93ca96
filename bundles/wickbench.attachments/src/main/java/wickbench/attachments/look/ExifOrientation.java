package wickbench.attachments.look;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.OptionalInt;

/** Reads how a picture is to be turned from its Exif segment (CIPA DC-008, tag 0x0112 of the first directory). */
final class ExifOrientation {
    private static final byte[] START = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    private static final int TAG = 0x0112;
    private static final int ENTRY_BYTES = 12;
    private static final int TIFF_HEADER_BYTES = 8;

    private ExifOrientation() {}

    /** Returns 1 to 8; empty when the segment says nothing of it, or nonsense. */
    static OptionalInt of(byte[] segment) {
        if (segment.length < START.length + TIFF_HEADER_BYTES
                || !Arrays.equals(segment, 0, START.length, START, 0, START.length)) {
            return OptionalInt.empty();
        }
        ByteBuffer tiff = ByteBuffer.wrap(segment, START.length, segment.length - START.length)
                .slice();
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = tiff.getInt(4);
        return directory < TIFF_HEADER_BYTES || directory > tiff.limit() - 2
                ? OptionalInt.empty()
                : within(tiff, directory);
    }

    private static OptionalInt within(ByteBuffer tiff, int directory) {
        int entries = Short.toUnsignedInt(tiff.getShort(directory));
        for (int i = 0; i < entries; i++) {
            int at = directory + 2 + i * ENTRY_BYTES;
            if (at + ENTRY_BYTES > tiff.limit()) {
                return OptionalInt.empty();
            }
            if (Short.toUnsignedInt(tiff.getShort(at)) == TAG) {
                int value = tiff.getShort(at + 8);
                return value >= 1 && value <= 8 ? OptionalInt.of(value) : OptionalInt.empty();
            }
        }
        return OptionalInt.empty();
    }
}
