package wickbench.index;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.zip.CRC32C;

/** A check sum (CRC-32C) for each block of a file; those of blocks never read or written since a crash are not known. */
final class BlockSums {
    static final int BLOCK = 4096;

    private static final long UNKNOWN = -1;
    private static final int MAGIC = 0x77_62_73_31;
    private static final int HEAD = Integer.BYTES + Long.BYTES;

    private long[] sums = new long[64];
    private int known;

    /** Takes up what was laid down when the file was closed, if it was closed and the file is as long as then. */
    static BlockSums takeUp(Path path, long length) throws IOException {
        BlockSums sums = new BlockSums();
        sums.cut((int) ((length + BLOCK - 1) / BLOCK));
        if (Files.exists(path)) {
            byte[] bytes = Files.readAllBytes(path);
            // gone while the file is open: after a crash they would tell of older blocks
            Files.delete(path);
            sums.read(bytes, length);
        }
        return sums;
    }

    private void read(byte[] bytes, long length) throws ForeignBytes {
        ByteBuffer from = ByteBuffer.wrap(bytes);
        boolean whole = bytes.length >= HEAD + Integer.BYTES
                && from.getInt(bytes.length - Integer.BYTES) == (int) sum(bytes, 0, bytes.length - Integer.BYTES)
                && from.getInt() == MAGIC;
        if (!whole || from.getLong() != length) {
            throw new ForeignBytes(0);
        }
        for (int block = 0; block < known; block++) {
            sums[block] = Integer.toUnsignedLong(from.getInt());
        }
    }

    /** Returns the first block whose sum is not known. */
    OptionalInt unknown(int from) {
        return IntStream.range(from, known)
                .filter(block -> sums[block] == UNKNOWN)
                .findFirst();
    }

    /** Lays down all sums for a file that is closed. */
    void layDown(Path path, long length) throws IOException {
        ByteBuffer to = ByteBuffer.allocate(HEAD + Integer.BYTES * (known + 1));
        to.putInt(MAGIC).putLong(length);
        for (int block = 0; block < known; block++) {
            to.putInt((int) sums[block]);
        }
        to.putInt((int) sum(to.array(), 0, to.position()));
        Files.write(path, to.array());
    }

    /** Holds a block that was read, and begins at a place, against its sum; one that is not known is believed. */
    void check(int block, byte[] bytes, int at) throws ForeignBytes {
        long sum = sum(bytes, at, BLOCK);
        if (block < known && sums[block] != UNKNOWN && sums[block] != sum) {
            throw new ForeignBytes(block);
        }
        set(block, sum);
    }

    void wrote(int block, byte[] bytes, int at) {
        set(block, sum(bytes, at, BLOCK));
    }

    private void set(int block, long sum) {
        if (block >= known) {
            int before = known;
            cut(block + 1);
            // blocks that a file grew over were never written, so they hold zeros
            Arrays.fill(sums, before, known, sum(new byte[BLOCK], 0, BLOCK));
        }
        sums[block] = sum;
    }

    /** Knows so many blocks from now on; new ones by no sum yet. */
    void cut(int blocks) {
        if (blocks > sums.length) {
            sums = Arrays.copyOf(sums, Math.max(blocks, 2 * sums.length));
        }
        if (blocks > known) {
            Arrays.fill(sums, known, blocks, UNKNOWN);
        }
        known = blocks;
    }

    private static long sum(byte[] bytes, int at, int length) {
        CRC32C crc = new CRC32C();
        crc.update(bytes, at, length);
        return crc.getValue();
    }
}
