package wickbench.parts.archive;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Packs a set and signs it; the same set by the same key gives the same bytes. */
public final class SetPacking {
    /** The earliest time that a zip can say; when a file was packed tells nothing. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private SetPacking() {}

    /** Returns the archive. */
    public static byte[] pack(byte[] feature, Map<String, byte[]> bundles, MakerKey key) {
        Map<String, byte[]> files = new TreeMap<>();
        files.put(SafeName.FEATURE, feature);
        bundles.forEach((name, jar) -> files.put(SafeName.BUNDLES + name, jar));
        byte[] list = DigestList.of(files);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            put(zip, SafeName.DIGESTS, list);
            put(zip, SafeName.SIGNATURE, key.sign(list));
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                put(zip, file.getKey(), file.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
    }
}
