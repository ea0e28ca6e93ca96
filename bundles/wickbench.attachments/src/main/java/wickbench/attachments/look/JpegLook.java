package wickbench.attachments.look;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import wickbench.api.attachment.Picture;

/**
 * Walks the segments of a JPEG (ITU-T T.81) to its end.
 *
 * <p>Cameras append a second picture or notes of their own behind the end, so what follows is no fault by itself.
 */
final class JpegLook {
    private static final int END = 0xD9;
    private static final int SCAN = 0xDA;
    private static final int EXIF = 0xE1;
    private static final int FOUR_COLOURS = 4;

    private final Bytes bytes;
    private Optional<Picture> frame = Optional.empty();
    private int orientation = 1;

    private JpegLook(Bytes bytes) {
        this.bytes = bytes;
    }

    /** Reads on behind the first marker. */
    static Picture of(Bytes bytes) throws IOException, Unfit {
        return new JpegLook(bytes).read();
    }

    private Picture read() throws IOException, Unfit {
        boolean scanned = false;
        int marker = marker();
        while (marker != END) {
            segment(marker);
            scanned |= marker == SCAN;
            marker = marker == SCAN ? afterScan() : marker();
        }
        Picture found = frame.orElseThrow(() -> new Unfit(Unfit.DAMAGED));
        if (!scanned) {
            throw new Unfit(Unfit.DAMAGED);
        }
        return new Picture(found.width(), found.height(), orientation, found.bits(), found.unreadable());
    }

    private int marker() throws IOException, Unfit {
        if (bytes.one() != 0xFF) {
            throw new Unfit(Unfit.DAMAGED);
        }
        int marker = bytes.one();
        while (marker == 0xFF) {
            marker = bytes.one();
        }
        return marker;
    }

    /** Returns the first marker behind the coded data, in which 0 and the restarts stand for data. */
    private int afterScan() throws IOException, Unfit {
        while (true) {
            if (bytes.one() == 0xFF) {
                int marker = bytes.one();
                while (marker == 0xFF) {
                    marker = bytes.one();
                }
                if (marker != 0 && !isRestart(marker)) {
                    return marker;
                }
            }
        }
    }

    private void segment(int marker) throws IOException, Unfit {
        if (isRestart(marker) || marker == 0x01) {
            return;
        }
        int length = bytes.two() - 2;
        if (length < 0) {
            throw new Unfit(Unfit.DAMAGED);
        }
        if (isFrame(marker)) {
            frame = Optional.of(frame(bytes.take(length)));
        } else if (marker == EXIF) {
            orientation = ExifOrientation.of(bytes.take(length)).orElse(orientation);
        } else {
            bytes.skip(length);
        }
    }

    private static Picture frame(byte[] content) throws Unfit {
        if (content.length < 6) {
            throw new Unfit(Unfit.DAMAGED);
        }
        ByteBuffer fields = ByteBuffer.wrap(content);
        int bits = fields.get();
        int height = Short.toUnsignedInt(fields.getShort());
        int width = Short.toUnsignedInt(fields.getShort());
        int colours = fields.get();
        if (width == 0 || height == 0) {
            throw new Unfit(Unfit.DAMAGED);
        }
        return new Picture(
                width,
                height,
                1,
                bits,
                colours == FOUR_COLOURS ? Optional.of("picture.four-colours") : Optional.empty());
    }

    /** Start of frame, of any kind; C4, C8 and CC are other tables in the same row. */
    private static boolean isFrame(int marker) {
        return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
    }

    private static boolean isRestart(int marker) {
        return marker >= 0xD0 && marker <= 0xD7;
    }
}
