package wickbench.parts.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.journal.Hash;
import wickbench.parts.words.PartsWords;

/**
 * An install set out of a file, found whole and signed by a maker that this product knows.
 *
 * @param source the file, as complaints name it
 * @param bytes the whole file, for who keeps it
 * @param feature what the set says of itself, as JSON
 * @param bundles the jars by file name
 * @param maker who signed
 */
public record SetArchive(String source, byte[] bytes, byte[] feature, Map<String, byte[]> bundles, String maker) {

    /**
     * Reads a file and judges its form, its signature and its list; says nothing of what the set asks for.
     *
     * @throws BadInput when it is no such archive
     * @throws wickbench.api.check.Refusal {@code part.unsigned}, {@code part.signature}, {@code part.file-missing},
     *     {@code part.file-unlisted} or {@code part.file-changed}
     */
    public static SetArchive read(Path file, Makers makers) {
        return read(file.toString(), bytes(file), makers);
    }

    static SetArchive read(String source, byte[] bytes, Makers makers) {
        Map<String, byte[]> files = new TreeMap<>(StrictZip.read(source, bytes));
        byte[] list = files.remove(SafeName.DIGESTS);
        byte[] signature = files.remove(SafeName.SIGNATURE);
        if (list == null || signature == null) {
            throw PartsWords.refusal("part.unsigned", source);
        }
        String maker = makers.signer(list, signature).orElseThrow(() -> PartsWords.refusal("part.signature", source));
        DigestList.hold(source, list, files);
        byte[] feature = files.remove(SafeName.FEATURE);
        if (feature == null) {
            throw new BadInput(Complaint.of(source, SafeName.FEATURE, PartsWords.get("file.none")));
        }
        Map<String, byte[]> bundles = new TreeMap<>();
        files.forEach((name, jar) -> bundles.put(name.substring(SafeName.BUNDLES.length()), jar));
        return new SetArchive(source, bytes, feature, bundles, maker);
    }

    /** Returns where complaints about what the set says of itself point to. */
    public String featureSource() {
        return source + "!" + SafeName.FEATURE;
    }

    public Hash hash() {
        return Hash.ofContent(bytes);
    }

    private static byte[] bytes(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new BadInput(Complaint.of(file.toString(), PartsWords.get("file.none")));
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(Limits.ARCHIVE + 1);
            if (bytes.length > Limits.ARCHIVE) {
                throw new BadInput(
                        Complaint.of(file.toString(), PartsWords.get("zip.large", Files.size(file), Limits.ARCHIVE)));
            }
            return bytes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
