package wickbench.index;

import static wickbench.index.BlockSums.BLOCK;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.OptionalInt;
import org.h2.store.fs.FileBaseDefault;

/** A file whose blocks are summed up when written and held against that when read. Safe for several threads. */
final class CheckedFile extends FileBaseDefault {
    private final FileChannel file;
    private final Path path;
    private final Trust trust;
    private final BlockSums sums;

    CheckedFile(FileChannel file, Path path, Trust trust) throws IOException {
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
        for (int block = first; block <= last; block++) {
            byte[] bytes = block(block);
            check(block, bytes);
            int from = (int) Math.max(0, position - (long) block * BLOCK);
            int to = (int) Math.min(BLOCK, position + wanted - (long) block * BLOCK);
            target.put(bytes, from, to - from);
        }
        return wanted;
    }

    private void check(int block, byte[] bytes) throws ForeignBytes {
        try {
            sums.check(block, bytes);
        } catch (ForeignBytes e) {
            throw trust.lose(e);
        }
    }

    /** Reads a block as it stands; behind the end of the file stand zeros. */
    private byte[] block(int block) throws IOException {
        byte[] bytes = new byte[BLOCK];
        ByteBuffer into = ByteBuffer.wrap(bytes);
        long at = (long) block * BLOCK;
        while (into.hasRemaining() && file.read(into, at + into.position()) >= 0) {
            continue;
        }
        return bytes;
    }

    @Override
    public synchronized int write(ByteBuffer source, long position) throws IOException {
        trust.refuseRead();
        byte[] bytes = new byte[source.remaining()];
        source.get(bytes);
        checkEdges(position, position + bytes.length);
        ByteBuffer out = ByteBuffer.wrap(bytes);
        while (out.hasRemaining()) {
            file.write(out, position + out.position());
        }
        sum(bytes, position);
        return bytes.length;
    }

    /** Checks the blocks that keep some of what they held, so that no wrong bit is summed up as right. */
    private void checkEdges(long from, long to) throws IOException {
        for (long edge : new long[] {from, to}) {
            if (edge % BLOCK != 0 && edge < file.size()) {
                int block = (int) (edge / BLOCK);
                check(block, block(block));
            }
        }
    }

    private void sum(byte[] bytes, long position) throws IOException {
        int first = (int) (position / BLOCK);
        int last = (int) ((position + bytes.length - 1) / BLOCK);
        for (int block = first; block <= last; block++) {
            int from = (int) ((long) block * BLOCK - position);
            boolean whole = from >= 0 && from + BLOCK <= bytes.length;
            sums.wrote(block, whole ? Arrays.copyOfRange(bytes, from, from + BLOCK) : block(block));
        }
    }

    @Override
    protected void implTruncate(long size) throws IOException {
        file.truncate(size);
        int blocks = (int) ((size + BLOCK - 1) / BLOCK);
        sums.cut(blocks);
        if (size % BLOCK != 0) {
            sums.wrote(blocks - 1, block(blocks - 1));
        }
    }

    @Override
    public void force(boolean metaData) throws IOException {
        file.force(metaData);
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
            check(block.getAsInt(), block(block.getAsInt()));
        }
    }
}
