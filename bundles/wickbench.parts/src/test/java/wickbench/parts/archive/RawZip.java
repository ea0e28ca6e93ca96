package wickbench.parts.archive;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/** Writes zips byte by byte, wrong ones too, which no library would. */
final class RawZip {
    static final int PLAIN = 0100644 << 16;
    static final int LINK = 0120777 << 16;

    private final List<byte[]> locals = new ArrayList<>();
    private final List<byte[]> directory = new ArrayList<>();
    private int written;
    private int lastHeader;

    /** A file as it should be. */
    RawZip file(String name, byte[] bytes) {
        return file(name, bytes, bytes.length, PLAIN);
    }

    /** A deflated file that announces {@code size} bytes and has that mode. */
    RawZip file(String name, byte[] bytes, long size, int mode) {
        byte[] packed = deflated(bytes);
        CRC32 crc = new CRC32();
        crc.update(bytes);
        lastHeader = written;
        byte[] local = buffer(30 + name.length() + packed.length)
                .putInt(0x04034b50)
                .putShort((short) 20)
                .putShort((short) 0)
                .putShort((short) 8)
                .putInt(0)
                .putInt((int) crc.getValue())
                .putInt(packed.length)
                .putInt((int) size)
                .putShort((short) name.length())
                .putShort((short) 0)
                .put(latin(name))
                .put(packed)
                .array();
        locals.add(local);
        written += local.length;
        return listed(name, crc.getValue(), packed.length, size, mode);
    }

    /** Lists the last file once more, under another name or the same. */
    RawZip again(String name, byte[] bytes) {
        CRC32 crc = new CRC32();
        crc.update(bytes);
        return listed(name, crc.getValue(), deflated(bytes).length, bytes.length, PLAIN);
    }

    private RawZip listed(String name, long crc, int packed, long size, int mode) {
        directory.add(buffer(46 + name.length())
                .putInt(0x02014b50)
                .putShort((short) (3 << 8 | 20))
                .putShort((short) 20)
                .putShort((short) 0)
                .putShort((short) 8)
                .putInt(0)
                .putInt((int) crc)
                .putInt(packed)
                .putInt((int) size)
                .putShort((short) name.length())
                .putShort((short) 0)
                .putShort((short) 0)
                .putShort((short) 0)
                .putShort((short) 0)
                .putInt(mode)
                .putInt(lastHeader)
                .put(latin(name))
                .array());
        return this;
    }

    byte[] bytes() {
        int listed = directory.stream().mapToInt(each -> each.length).sum();
        ByteBuffer all = buffer(written + listed + 22);
        locals.forEach(all::put);
        directory.forEach(all::put);
        return all.putInt(0x06054b50)
                .putInt(0)
                .putShort((short) directory.size())
                .putShort((short) directory.size())
                .putInt(listed)
                .putInt(written)
                .putShort((short) 0)
                .array();
    }

    private static byte[] deflated(byte[] bytes) {
        Deflater deflater = new Deflater(9, true);
        deflater.setInput(bytes);
        deflater.finish();
        byte[] room = new byte[bytes.length + 64];
        int length = deflater.deflate(room);
        deflater.end();
        return java.util.Arrays.copyOf(room, length);
    }

    private static byte[] latin(String name) {
        return name.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static ByteBuffer buffer(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }
}
