package wickbench.attachments.look;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Pictures for tests, made by the platform's own writers and then bent. */
public final class Pictures {
    private Pictures() {}

    public static byte[] png(int width, int height) {
        return written("png", width, height);
    }

    public static byte[] jpeg(int width, int height) {
        return written("jpg", width, height);
    }

    private static byte[] written(String format, int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < width; x++) {
            for (int y = 0; y < height; y++) {
                image.setRGB(x, y, x * 2_654_435 ^ y * 40_503);
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, format, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** A PNG whose header claims a size that its few bytes never fill. */
    static byte[] pngThatClaims(int width, int height, int bits) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(Arrays.copyOf(png(1, 1), 8));
        byte[] header = ByteBuffer.allocate(13)
                .putInt(width)
                .putInt(height)
                .put((byte) bits)
                .put((byte) 2)
                .put(new byte[3])
                .array();
        chunk(out, "IHDR", header);
        chunk(out, "IDAT", new byte[20]);
        chunk(out, "IEND", new byte[0]);
        return out.toByteArray();
    }

    /** Puts an Exif segment with this orientation behind the first marker of a JPEG. */
    static byte[] turned(byte[] jpeg, int orientation, ByteOrder order) {
        ByteBuffer tiff = ByteBuffer.allocate(26).order(order);
        tiff.put(order == ByteOrder.LITTLE_ENDIAN ? new byte[] {'I', 'I'} : new byte[] {'M', 'M'});
        tiff.putShort((short) 42).putInt(8).putShort((short) 1);
        tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) orientation);
        return withSegment(jpeg, joined("Exif\0\0".getBytes(StandardCharsets.US_ASCII), tiff.array()));
    }

    static byte[] withSegment(byte[] jpeg, byte[] app1) {
        ByteBuffer segment = ByteBuffer.allocate(4 + app1.length);
        segment.put((byte) 0xFF)
                .put((byte) 0xE1)
                .putShort((short) (app1.length + 2))
                .put(app1);
        return joined(Arrays.copyOf(jpeg, 2), segment.array(), Arrays.copyOfRange(jpeg, 2, jpeg.length));
    }

    /** A JPEG whose frame header says four colours, as printing plants use. */
    static byte[] fourColours(byte[] jpeg) {
        byte[] bent = jpeg.clone();
        for (int at = 0; at < bent.length - 9; at++) {
            if ((bent[at] & 0xFF) == 0xFF && (bent[at + 1] & 0xFF) == 0xC0) {
                bent[at + 9] = 4;
                return bent;
            }
        }
        throw new IllegalArgumentException("no frame header");
    }

    static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            out.writeBytes(part);
        }
        return out.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream out, String type, byte[] content) throws IOException {
        byte[] typed = joined(type.getBytes(StandardCharsets.US_ASCII), content);
        CRC32 crc = new CRC32();
        crc.update(typed);
        DataOutputStream data = new DataOutputStream(out);
        data.writeInt(content.length);
        data.write(typed);
        data.writeInt((int) crc.getValue());
    }
}
