package wickbench.parts.archive;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.parts.words.PartsWords;

/** Unpacks a zip in memory, having first added up what would come out. */
final class StrictZip {
    private static final int HEADER = 0x04034b50;
    private static final int HEADER_SIZE = 30;

    private final String source;
    private final ByteBuffer zip;

    private StrictZip(String source, byte[] bytes) {
        this.source = source;
        zip = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    /**
     * Returns all files by name.
     *
     * @param source the name that complaints carry
     * @throws BadInput naming the file in it that is wrong; nothing was unpacked unless every name and size was right
     */
    static Map<String, byte[]> read(String source, byte[] bytes) {
        List<ZipPart> parts = ZipDirectory.read(source, bytes);
        StrictZip strict = new StrictZip(source, bytes);
        strict.checkNames(parts);
        strict.checkSizes(parts);
        strict.checkApart(parts);
        Map<String, byte[]> files = new TreeMap<>();
        parts.forEach(part -> files.put(part.name(), strict.unpacked(part)));
        return files;
    }

    /** Two names that differ in case only are one file on some systems. */
    private void checkNames(List<ZipPart> parts) {
        Set<String> seen = new HashSet<>();
        for (ZipPart part : parts) {
            if (!seen.add(part.name().toLowerCase(Locale.ROOT))) {
                throw bad(part, PartsWords.get("name.twice"));
            }
        }
    }

    private void checkSizes(List<ZipPart> parts) {
        long all = 0;
        for (ZipPart part : parts) {
            all += part.size();
            if (part.size() > Limits.SMALL && part.size() > (long) part.packedSize() * Limits.RATIO) {
                throw bad(part, PartsWords.get("zip.ratio", part.size(), part.packedSize(), Limits.RATIO));
            }
        }
        if (all > Limits.ALL) {
            throw new BadInput(Complaint.of(source, PartsWords.get("zip.large", all, Limits.ALL)));
        }
    }

    /** Files that share bytes are how a small zip becomes a huge one without a suspicious ratio. */
    private void checkApart(List<ZipPart> parts) {
        int free = 0;
        for (ZipPart part :
                parts.stream().sorted(Comparator.comparingInt(ZipPart::header)).toList()) {
            if (part.header() < free) {
                throw bad(part, PartsWords.get("zip.overlap"));
            }
            free = data(part) + part.packedSize();
        }
    }

    /** Returns where a file's bytes begin: behind its own header, which must say the same name. */
    private int data(ZipPart part) {
        int at = part.header();
        if (at > zip.limit() - HEADER_SIZE || zip.getInt(at) != HEADER) {
            throw bad(part, PartsWords.get("zip.header"));
        }
        int nameSize = zip.getShort(at + 26) & 0xFFFF;
        int data = at + HEADER_SIZE + nameSize + (zip.getShort(at + 28) & 0xFFFF);
        byte[] name = part.name().getBytes(java.nio.charset.StandardCharsets.UTF_8);
        boolean same = data <= zip.limit() - part.packedSize()
                && Arrays.equals(name, 0, name.length, zip.array(), at + HEADER_SIZE, at + HEADER_SIZE + nameSize);
        if (!same) {
            throw bad(part, PartsWords.get("zip.header"));
        }
        return data;
    }

    private byte[] unpacked(ZipPart part) {
        int data = data(part);
        byte[] bytes =
                part.packed() ? inflated(part, data) : Arrays.copyOfRange(zip.array(), data, data + part.packedSize());
        CRC32 crc = new CRC32();
        crc.update(bytes);
        if (bytes.length != part.size() || crc.getValue() != part.crc()) {
            throw bad(part, PartsWords.get("zip.damaged"));
        }
        return bytes;
    }

    /** Never makes more than was announced: one byte of room beyond it shows that there is more. */
    private byte[] inflated(ZipPart part, int data) {
        Inflater inflater = new Inflater(true);
        try {
            inflater.setInput(zip.array(), data, part.packedSize());
            byte[] room = new byte[part.size() + 1];
            int made = 0;
            int more;
            while (made < room.length && (more = inflater.inflate(room, made, room.length - made)) > 0) {
                made += more;
            }
            if (made != part.size() || !inflater.finished() || inflater.getRemaining() != 0) {
                throw bad(part, PartsWords.get("zip.damaged"));
            }
            return Arrays.copyOf(room, made);
        } catch (DataFormatException e) {
            throw bad(part, PartsWords.get("zip.damaged"));
        } finally {
            inflater.end();
        }
    }

    private BadInput bad(ZipPart part, String text) {
        return new BadInput(Complaint.of(source, part.name(), text));
    }
}
