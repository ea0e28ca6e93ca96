package wickbench.journal;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import wickbench.proof.Digest;
import wickbench.proof.Frontier;
import wickbench.proof.OpenKey;

/** Holds a station's checkpoints against the tree that its lines give, in the order in which they were made. */
final class SealCheck implements Closeable {
    private final StationFolder folder;
    private final Findings findings;
    private final SealLines lines;
    private Optional<Seal> next = Optional.empty();
    private boolean nextSigned;
    private long nextSize;
    private long line;
    private long checked;
    /** Entries that the newest good checkpoint covers. */
    private long good;

    private boolean rootBroken;

    /**
     * @param length bytes of the list of checkpoints to look at
     * @param key empty when the first entry cannot be read
     */
    SealCheck(StationFolder folder, long length, Optional<OpenKey> key, Findings findings) throws IOException {
        this.folder = folder;
        this.findings = findings;
        lines = new SealLines(folder, length, key);
        advance();
    }

    private void advance() throws IOException {
        Optional<Seal> before = next;
        next = Optional.empty();
        for (Optional<SealLine> at = lines.next(); at.isPresent(); at = lines.next()) {
            line = at.get().number();
            SealLine.Read read = at.get().read();
            if (fits(read.seal(), before)) {
                next = read.seal();
                nextSigned = read.signed();
                break;
            }
        }
        nextSize = next.map(Seal::size).orElse(-1L);
    }

    private boolean fits(Optional<Seal> seal, Optional<Seal> before) {
        if (seal.isEmpty()) {
            findings.in(where(), "checkpoint.unreadable", where());
            return false;
        }
        long least = before.map(Seal::size).orElse(0L);
        if (seal.get().size() < least) {
            findings.in(where(), "checkpoint.order", seal.get().size(), least);
            return false;
        }
        return true;
    }

    private String where() {
        return folder.checkpoints().getFileName() + ":" + line;
    }

    /**
     * Compares the checkpoints that were made at this size.
     *
     * @param position bytes of the newest segment up to here
     */
    void at(Frontier frontier, long position) throws IOException {
        while (nextSize == frontier.size()) {
            compare(next.get(), frontier, position);
            advance();
        }
    }

    private void compare(Seal seal, Frontier frontier, long position) {
        checked++;
        if (!nextSigned) {
            findings.in(where(), "checkpoint.signature", seal.size());
        } else if (!seal.root().equals(frontier.root())) {
            rootBroken(seal, frontier);
        } else if (seal.offset() != position) {
            findings.in(where(), "checkpoint.place", seal.size());
        } else {
            good = seal.size();
        }
    }

    /** Reports the first root that does not fit; all later ones say the same. */
    private void rootBroken(Seal seal, Frontier frontier) {
        if (!rootBroken) {
            rootBroken = true;
            long first = Math.max(good, firstChanged(seal, frontier.peaks()));
            findings.among(first, seal.size() - 1, "checkpoint.root", seal.size(), first, seal.size() - 1);
        }
    }

    /** Returns where the first subtree begins whose root is another than the checkpoint's. */
    private static long firstChanged(Seal seal, List<Digest> peaks) {
        long first = 0;
        long rest = seal.size();
        // where the roots differ, one of the subtrees does
        for (int i = 0; peaks.get(i).equals(seal.frontier().get(i)); i++) {
            first += Long.highestOneBit(rest);
            rest -= Long.highestOneBit(rest);
        }
        return first;
    }

    /** Looks at the checkpoints beyond the last line. */
    void end() throws IOException {
        while (next.isPresent()) {
            findings.in(where(), "checkpoint.beyond", next.get().size());
            checked++;
            advance();
        }
        if (lines.left() > 0) {
            findings.in(
                    folder.checkpoints().getFileName().toString(),
                    "tail.torn",
                    lines.left(),
                    folder.checkpoints().getFileName());
        }
    }

    long checked() {
        return checked;
    }

    long good() {
        return good;
    }

    @Override
    public void close() throws IOException {
        lines.close();
    }
}
