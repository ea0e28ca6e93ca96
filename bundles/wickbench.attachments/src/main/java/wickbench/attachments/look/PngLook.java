package wickbench.attachments.look;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.zip.CRC32;
import wickbench.api.attachment.Picture;

/** Walks the chunks of a PNG (ISO/IEC 15948): each whole by its CRC, from IHDR to IEND, and nothing after. */
final class PngLook {
    private static final int IHDR = 0x49484452;
    private static final int IEND = 0x49454E44;
    private static final int IDAT = 0x49444154;
    private static final int HEADER_BYTES = 13;
    private static final int BUFFER = 1 << 13;

    private final Bytes bytes;
    private final byte[] buffer = new byte[BUFFER];

    private PngLook(Bytes bytes) {
        this.bytes = bytes;
    }

    /** Reads on behind the signature. */
    static Picture of(Bytes bytes) throws IOException, Unfit {
        PngLook look = new PngLook(bytes);
        Picture header = look.header();
        look.rest();
        return header;
    }

    private Picture header() throws IOException, Unfit {
        if (bytes.four() != HEADER_BYTES || bytes.four() != IHDR) {
            throw new Unfit(Unfit.DAMAGED);
        }
        byte[] header = bytes.take(HEADER_BYTES);
        CRC32 crc = started(IHDR);
        crc.update(header);
        proved(crc);
        ByteBuffer fields = ByteBuffer.wrap(header);
        int width = fields.getInt();
        int height = fields.getInt();
        int bits = fields.get();
        if (width < 1 || height < 1 || bits < 1 || bits > 16) {
            throw new Unfit(Unfit.DAMAGED);
        }
        return new Picture(width, height, 1, bits, Optional.empty());
    }

    private void rest() throws IOException, Unfit {
        boolean data = false;
        while (true) {
            int length = bytes.four();
            int type = bytes.four();
            if (length < 0 || type == IHDR) {
                throw new Unfit(Unfit.DAMAGED);
            }
            chunk(length, type);
            data |= type == IDAT;
            if (type == IEND) {
                break;
            }
        }
        if (!data) {
            throw new Unfit(Unfit.DAMAGED);
        }
        if (!bytes.atEnd()) {
            throw new Unfit(Unfit.TWO_KINDS);
        }
    }

    private void chunk(int length, int type) throws IOException, Unfit {
        CRC32 crc = started(type);
        int left = length;
        while (left > 0) {
            int read = bytes.some(buffer, Math.min(left, buffer.length));
            crc.update(buffer, 0, read);
            left -= read;
        }
        proved(crc);
    }

    private static CRC32 started(int type) {
        CRC32 crc = new CRC32();
        crc.update(ByteBuffer.allocate(Integer.BYTES).putInt(type).flip());
        return crc;
    }

    private void proved(CRC32 crc) throws IOException, Unfit {
        if (bytes.four() != (int) crc.getValue()) {
            throw new Unfit(Unfit.DAMAGED);
        }
    }
}
