package wickbench.parts.archive;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.parts.words.PartsWords;

/**
 * Reads the directory at the end of a zip (PKWARE APPNOTE 6.3.10, §4.3.12 and §4.3.16), strictly.
 *
 * <p>The platform's reader hides what tells a link from a file, takes a zip that begins or ends in something else, and lets the later of two
 * files of one name win. So the few records are read here: no comment, no second disk, no 64-bit sizes, no encryption, plain files only.
 */
final class ZipDirectory {
    private static final int END = 0x06054b50;
    private static final int END_SIZE = 22;
    private static final int ENTRY = 0x02014b50;
    private static final int ENTRY_SIZE = 46;
    private static final int DEFLATED = 8;

    /** How deflate was tuned (bits 1, 2), sizes behind the data (3), names in UTF-8 (11): none changes what a file is. */
    private static final int HARMLESS_FLAGS = 0b1000_0000_1110;

    private static final int UNIX = 3;
    private static final int FILE_TYPE = 0170000;
    private static final int PLAIN_FILE = 0100000;
    private static final int LINK = 0120000;

    private final String source;
    private final ByteBuffer zip;

    private ZipDirectory(String source, byte[] bytes) {
        this.source = source;
        zip = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    /** Returns what the directory lists, in its order. */
    static List<ZipPart> read(String source, byte[] bytes) {
        return new ZipDirectory(source, bytes).read();
    }

    private List<ZipPart> read() {
        int end = zip.limit() - END_SIZE;
        if (end < 0 || zip.getInt(end) != END || zip.getInt(end + 4) != 0 || zip.getShort(end + 20) != 0) {
            throw bad("", PartsWords.get("zip.none"));
        }
        int count = zip.getShort(end + 10) & 0xFFFF;
        if (count > Limits.FILES) {
            throw bad("", PartsWords.get("zip.files", count, Limits.FILES));
        }
        int at = zip.getInt(end + 16);
        if (at < 0 || count != (zip.getShort(end + 8) & 0xFFFF) || (long) at + zip.getInt(end + 12) != end) {
            throw bad("", PartsWords.get("zip.none"));
        }
        List<ZipPart> parts = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            at = entry(at, end, parts);
        }
        if (at != end) {
            throw bad("", PartsWords.get("zip.none"));
        }
        return parts;
    }

    /** Reads one record and returns where the next begins. */
    private int entry(int at, int end, List<ZipPart> parts) {
        if (at > end - ENTRY_SIZE || zip.getInt(at) != ENTRY) {
            throw bad("", PartsWords.get("zip.none"));
        }
        int nameSize = zip.getShort(at + 28) & 0xFFFF;
        int next = at + ENTRY_SIZE + nameSize + (zip.getShort(at + 30) & 0xFFFF) + (zip.getShort(at + 32) & 0xFFFF);
        if (next > end || nameSize > Limits.NAME) {
            throw bad("", PartsWords.get("zip.none"));
        }
        String name = new String(zip.array(), at + ENTRY_SIZE, nameSize, StandardCharsets.UTF_8);
        SafeName.check(source, name);
        checkKind(at, name);
        int method = zip.getShort(at + 10);
        if (method != 0 && method != DEFLATED || (zip.getShort(at + 8) & ~HARMLESS_FLAGS) != 0) {
            throw bad(name, PartsWords.get("zip.method"));
        }
        parts.add(new ZipPart(
                name,
                method == DEFLATED,
                zip.getInt(at + 16) & 0xFFFFFFFFL,
                size(name, zip.getInt(at + 20), Limits.ARCHIVE),
                size(name, zip.getInt(at + 24), Limits.FILE),
                size(name, zip.getInt(at + 42), Limits.ARCHIVE)));
        return next;
    }

    /** A mode is given by systems of the Unix kind only; elsewhere there is nothing but files and folders. */
    private void checkKind(int at, String name) {
        int type = (zip.get(at + 5) & 0xFF) == UNIX ? zip.getInt(at + 38) >>> 16 & FILE_TYPE : 0;
        if (type == LINK) {
            throw bad(name, PartsWords.get("zip.link"));
        }
        if (type != 0 && type != PLAIN_FILE) {
            throw bad(name, PartsWords.get("zip.kind"));
        }
    }

    /** The largest number of 32 bits also announces sizes of 64, which no set has. */
    private int size(String name, int size, int most) {
        long bytes = size & 0xFFFFFFFFL;
        if (bytes > most) {
            throw bad(name, PartsWords.get("zip.large", bytes, most));
        }
        return (int) bytes;
    }

    private BadInput bad(String name, String text) {
        return new BadInput(Complaint.of(source, name, text));
    }
}
