package wickbench.journal;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import wickbench.proof.Digest;
import wickbench.proof.Nodes;
import wickbench.proof.TreeHash;

/**
 * The hashes of a station's tree that were reckoned already, one file a level, each 32 bytes at its place.
 *
 * <p>A help and never a truth: nothing is forced, and what is read back is believed only after a proof led from it to a signed
 * root. Files that do not fit one another are thrown away. For one thread.
 */
final class TreeFiles implements Nodes<IOException>, Closeable {
    static final int BYTES = Digest.SIZE;
    /** From here on levels are held in memory too: a byte for each entry, and most of what proofs ask for. */
    private static final int HELD = 6;

    private final Path folder;
    private final TreeHash hash = new TreeHash();
    private final List<Level> levels = new ArrayList<>();
    private long size;

    /** A level: its file, and the last hash in it, which waits for a neighbour. */
    private static final class Level implements Closeable {
        private final RandomAccessFile in;
        private final OutputStream out;
        private final boolean isHeld;
        private byte[] held = new byte[0];
        private int heldBytes;
        private byte[] last = new byte[BYTES];

        Level(Path file, boolean isHeld) throws IOException {
            this.isHeld = isHeld;
            out = new BufferedOutputStream(new FileOutputStream(file.toFile(), true));
            in = new RandomAccessFile(file.toFile(), "r");
            if (isHeld) {
                held = new byte[Math.toIntExact(in.length())];
                in.readFully(held);
                heldBytes = held.length;
            }
        }

        void add(byte[] node) throws IOException {
            out.write(node);
            last = node;
            if (isHeld) {
                if (heldBytes == held.length) {
                    held = Arrays.copyOf(held, Math.max(64 * BYTES, 2 * held.length));
                }
                System.arraycopy(node, 0, held, heldBytes, BYTES);
                heldBytes += BYTES;
            }
        }

        void read(long index, byte[] target) throws IOException {
            if (isHeld) {
                System.arraycopy(held, Math.toIntExact(index * BYTES), target, 0, target.length);
            } else {
                in.seek(index * BYTES);
                in.readFully(target);
            }
        }

        @Override
        public void close() throws IOException {
            out.close();
            in.close();
        }
    }

    private TreeFiles(Path folder) {
        this.folder = folder;
    }

    /** Opens what is there, or begins anew where that does not fit together. */
    static TreeFiles open(Path folder) throws IOException {
        Files.createDirectories(folder);
        TreeFiles files = new TreeFiles(folder);
        if (!files.takeUp()) {
            files.reset();
        }
        return files;
    }

    private boolean takeUp() throws IOException {
        long bytes = length(0);
        long leaves = bytes / BYTES;
        boolean fits = bytes % BYTES == 0;
        for (int level = 0; fits && leaves >>> level > 0; level++) {
            fits = length(level) == (leaves >>> level) * BYTES;
        }
        if (fits) {
            for (int level = 0; leaves >>> level > 0; level++) {
                level(level).read((leaves >>> level) - 1, levels.get(level).last);
            }
            size = leaves;
        }
        return fits;
    }

    private long length(int level) {
        return file(level).toFile().length();
    }

    private Path file(int level) {
        return folder.resolve(String.format(Locale.ROOT, "level-%02d", level));
    }

    private Level level(int level) throws IOException {
        if (level == levels.size()) {
            levels.add(new Level(file(level), level >= HELD));
        }
        return levels.get(level);
    }

    long size() {
        return size;
    }

    /** Adds the next leaf; {@link #flush} makes it readable. */
    void add(byte[] leaf) throws IOException {
        byte[] node = leaf;
        int level = 0;
        for (long left = size; ; left >>>= 1) {
            Level at = level(level);
            byte[] before = at.last;
            at.add(node);
            if ((left & 1) == 0) {
                break;
            }
            node = hash.node(before, node);
            level++;
        }
        size++;
    }

    void flush() throws IOException {
        for (Level level : levels) {
            level.out.flush();
        }
    }

    @Override
    public byte[] node(int level, long index) throws IOException {
        byte[] node = new byte[BYTES];
        levels.get(level).read(index, node);
        return node;
    }

    /** Returns hashes that follow one another on a level, as one array. */
    byte[] nodes(int level, long index, int count) throws IOException {
        byte[] nodes = new byte[count * BYTES];
        levels.get(level).read(index, nodes);
        return nodes;
    }

    /** Throws everything away. */
    void reset() throws IOException {
        close();
        levels.clear();
        for (int level = 0; Files.deleteIfExists(file(level)); level++) {
            size = 0;
        }
        size = 0;
    }

    @Override
    public void close() throws IOException {
        for (Level level : levels) {
            level.close();
        }
    }
}
