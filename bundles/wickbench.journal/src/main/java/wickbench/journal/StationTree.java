package wickbench.journal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import wickbench.api.check.Refusal;
import wickbench.api.progress.Progress;
import wickbench.proof.Consistency;
import wickbench.proof.Digest;
import wickbench.proof.Inclusion;
import wickbench.proof.Tree;
import wickbench.proof.TreeHash;

/**
 * The tree of one station, from which proofs are made; safe for several threads.
 *
 * <p>Hands out nothing that does not lead to a signed root. Where it does not, the kept hashes are at fault or the entries are:
 * the hashes are made again from the entries once, and what then still does not fit is tampering.
 */
final class StationTree implements Closeable {
    private static final int STEP = 4_096;

    private final Station station;
    private final Path folder;
    private final TreeFiles files;
    private final Tree<IOException> tree;

    StationTree(Station station, Path folder) throws IOException {
        this.station = station;
        this.folder = folder;
        files = TreeFiles.open(folder);
        tree = new Tree<>(files);
    }

    Path folder() {
        return folder;
    }

    /** Makes something of the tree and checks it. */
    private interface Attempt<T> {
        T make() throws IOException;

        boolean holds(T made);
    }

    /** Proves an entry in the tree of a size, against the root of that size. */
    synchronized Inclusion inclusion(long place, long size, Digest leaf, Digest root) throws IOException {
        return proved(size, new Attempt<Inclusion>() {
            @Override
            public Inclusion make() throws IOException {
                return tree.inclusion(place, size);
            }

            @Override
            public boolean holds(Inclusion made) {
                return made.proves(leaf, root);
            }
        });
    }

    /** Returns the root of an older size with the proof that a signed root goes on from it. */
    synchronized Linked link(long older, Seal newer) throws IOException {
        return proved(newer.size(), new Attempt<Linked>() {
            @Override
            public Linked make() throws IOException {
                return new Linked(tree.root(older), tree.consistency(older, newer.size()));
            }

            @Override
            public boolean holds(Linked made) {
                return made.proof().proves(made.root(), newer.root());
            }
        });
    }

    /**
     * A root of an older size.
     *
     * @param proof that the newer tree begins with it
     */
    record Linked(Digest root, Consistency proof) {}

    private <T> T proved(long size, Attempt<T> attempt) throws IOException {
        grow(size, Progress.NONE);
        T made = attempt.make();
        if (attempt.holds(made)) {
            return made;
        }
        files.reset();
        grow(size, Progress.NONE);
        T again = attempt.make();
        if (!attempt.holds(again)) {
            throw Say.tampered("checkpoint.root", size, 0, size - 1);
        }
        return again;
    }

    /** Reckons the hashes of the entries up to a size. */
    private void grow(long size, Progress progress) throws IOException {
        if (files.size() < size) {
            try {
                reckon(size, progress);
            } catch (IOException e) {
                files.reset();
                throw e;
            }
        }
    }

    private void reckon(long size, Progress progress) throws IOException {
        boolean[] going = {true};
        TreeHash hash = new TreeHash();
        station.reading().lines(station.kept(), files.size(), size, line -> {
            files.add(hash.leaf(line.buffer(), line.from(), line.length()));
            going[0] = files.size() % STEP != 0 || progress.at(files.size(), size);
            return going[0];
        });
        files.flush();
        if (!going[0]) {
            throw new Refusal("export.stopped", Say.words("export.stopped"));
        }
    }

    /** Lets work on a tree that holds a signed root's leaves, proved to lead there. */
    synchronized void under(Seal seal, Progress progress, Work work) throws IOException {
        grow(seal.size(), progress);
        // of one size, only the signed root itself is proved
        link(seal.size(), seal);
        work.on(files);
    }

    /** What is done with the hashes. */
    @FunctionalInterface
    interface Work {
        void on(TreeFiles files) throws IOException;
    }

    @Override
    public synchronized void close() throws IOException {
        files.close();
    }
}
