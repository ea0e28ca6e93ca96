package wickbench.index;

import static wickbench.index.BlockSums.BLOCK;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.util.OptionalInt;
import org.h2.store.fs.FileBaseDefault;

/** A file whose blocks are summed up when written and held against that when read. Safe for several threads. */
final class CheckedFile extends FileBaseDefault {
    private final PlainFile file;
    private final Path path;
    private final Trust trust;
    private final BlockSums sums;

    CheckedFile(PlainFile file, Path path, Trust trust) throws IOException {
        this.file = file;
        this.path = path;
        this.trust = trust;
        try {
            sums = BlockSums.takeUp(path, file.size());
        } catch (ForeignBytes e) {
            file.close();
            throw trust.lose(e);
        } catch (IOException e) {
            file.close();
            throw e;
        }
    }

    @Override
    public long size() throws IOException {
        return file.size();
    }

    @Override
    public synchronized int read(ByteBuffer target, long position) throws IOException {
        trust.refuseRead();
        long size = file.size();
        int wanted = (int) Math.min(target.remaining(), size - position);
        if (wanted <= 0) {
            return -1;
        }
        int first = (int) (position / BLOCK);
        int last = (int) ((position + wanted - 1) / BLOCK);
        byte[] bytes = blocks(first, last);
        for (int block = first; block <= last; block++) {
            check(block, bytes, (block - first) * BLOCK);
        }
        target.put(bytes, (int) (position - (long) first * BLOCK), wanted);
        return wanted;
    }

    private void check(int block, byte[] bytes, int at) throws ForeignBytes {
        try {
            sums.check(block, bytes, at);
        } catch (ForeignBytes e) {
            throw trust.lose(e);
        }
    }

    /** Reads blocks as they stand, all at once. */
    private byte[] blocks(int first, int last) throws IOException {
        return file.read((long) first * BLOCK, (last - first + 1) * BLOCK);
    }

    @Override
    public synchronized int write(ByteBuffer source, long position) throws IOException {
        trust.refuseRead();
        byte[] bytes = new byte[source.remaining()];
        source.get(bytes);
        checkEdges(position, position + bytes.length);
        file.write(position, bytes);
        sum(bytes, position);
        return bytes.length;
    }

    /** Checks the blocks that keep some of what they held, so that no wrong bit is summed up as right. */
    private void checkEdges(long from, long to) throws IOException {
        for (long edge : new long[] {from, to}) {
            if (edge % BLOCK != 0 && edge < file.size()) {
                int block = (int) (edge / BLOCK);
                check(block, blocks(block, block), 0);
            }
        }
    }

    private void sum(byte[] bytes, long position) throws IOException {
        int first = (int) (position / BLOCK);
        int last = (int) ((position + bytes.length - 1) / BLOCK);
        for (int block = first; block <= last; block++) {
            int from = (int) ((long) block * BLOCK - position);
            boolean whole = from >= 0 && from + BLOCK <= bytes.length;
            sums.wrote(block, whole ? bytes : blocks(block, block), whole ? from : 0);
        }
    }

    @Override
    protected void implTruncate(long size) throws IOException {
        file.cut(size);
        int blocks = (int) ((size + BLOCK - 1) / BLOCK);
        sums.cut(blocks);
        if (size % BLOCK != 0) {
            sums.wrote(blocks - 1, blocks(blocks - 1, blocks - 1), 0);
        }
    }

    @Override
    public void force(boolean metaData) throws IOException {
        file.force();
    }

    @Override
    public FileLock tryLock(long position, long size, boolean shared) throws IOException {
        return file.tryLock(position, size, shared);
    }

    @Override
    protected void implCloseChannel() throws IOException {
        try {
            trust.refuseRead();
            learnRest();
            sums.layDown(path, file.size());
        } finally {
            file.close();
        }
    }

    /** After a crash only what was read is known; the rest is believed once. */
    private void learnRest() throws IOException {
        for (OptionalInt block = sums.unknown(0); block.isPresent(); block = sums.unknown(block.getAsInt())) {
            check(block.getAsInt(), blocks(block.getAsInt(), block.getAsInt()), 0);
        }
    }
}
