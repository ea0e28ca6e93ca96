package wickbench.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;

/** A stranger's reader of C2SP tlog-tiles, written from its text and from RFC 6962 §2.1; uses nothing of the house. */
final class TileReader {
    private final Path log;
    private final long size;
    private final byte[] root;

    TileReader(Path log) throws IOException {
        this.log = log;
        List<String> note = Files.readAllLines(log.resolve("checkpoint"), StandardCharsets.UTF_8);
        size = Long.parseLong(note.get(1));
        root = Base64.getDecoder().decode(note.get(2));
    }

    long size() {
        return size;
    }

    /** Reads all entries from their bundles. */
    List<String> entries() throws IOException {
        List<String> entries = new ArrayList<>();
        for (long n = 0; n * 256 < size; n++) {
            ByteBuffer bundle = ByteBuffer.wrap(Files.readAllBytes(path("entries", n, size)));
            while (bundle.hasRemaining()) {
                byte[] entry = new byte[Short.toUnsignedInt(bundle.getShort())];
                bundle.get(entry);
                entries.add(new String(entry, StandardCharsets.UTF_8));
            }
        }
        return entries;
    }

    /** Holds each tile against the one below it and the lowest against the entries; then the root against the checkpoint. */
    boolean holds() throws IOException, GeneralSecurityException {
        List<byte[]> below = new ArrayList<>();
        for (String entry : entries()) {
            below.add(sha256(new byte[] {0}, entry.getBytes(StandardCharsets.UTF_8)));
        }
        boolean holds = below.size() == size && Arrays.equals(rootOf(below), root);
        for (int level = 0; below.size() > 0; level++) {
            List<byte[]> here = level(level, below.size());
            holds &= Arrays.deepEquals(here.toArray(), below.toArray());
            below = new ArrayList<>();
            for (int tile = 0; (tile + 1) * 256 <= here.size(); tile++) {
                below.add(rootOf(here.subList(tile * 256, (tile + 1) * 256)));
            }
        }
        return holds;
    }

    private List<byte[]> level(int level, long hashes) throws IOException {
        List<byte[]> found = new ArrayList<>();
        for (long n = 0; n * 256 < hashes; n++) {
            byte[] tile = Files.readAllBytes(path(Integer.toString(level), n, hashes));
            for (int i = 0; i < tile.length; i += 32) {
                found.add(Arrays.copyOfRange(tile, i, i + 32));
            }
        }
        return found;
    }

    private Path path(String level, long n, long items) {
        StringBuilder name = new StringBuilder(String.format("%03d", n % 1000));
        for (long rest = n / 1000; rest > 0; rest /= 1000) {
            name.insert(0, String.format("x%03d/", rest % 1000));
        }
        if ((n + 1) * 256 > items) {
            name.append(".p/").append(items % 256);
        }
        return log.resolve("tile").resolve(level).resolve(name.toString());
    }

    private static byte[] rootOf(List<byte[]> leaves) throws GeneralSecurityException {
        if (leaves.size() == 1) {
            return leaves.get(0);
        }
        int split = Integer.highestOneBit(leaves.size() - 1);
        return sha256(new byte[] {1}, rootOf(leaves.subList(0, split)), rootOf(leaves.subList(split, leaves.size())));
    }

    private static byte[] sha256(byte[]... parts) throws GeneralSecurityException {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        Arrays.stream(parts).forEach(digest::update);
        return digest.digest();
    }
}
