package wickbench.journal;

import wickbench.api.journal.Hash;
import wickbench.proof.TreeHash;

/**
 * How far a station's journal is acknowledged; readers see no further.
 *
 * @param size entries
 * @param leaf leaf hash of the last entry; before the first, the root of the empty tree
 * @param length acknowledged bytes of the newest segment
 */
record Kept(long size, Hash leaf, long length) {
    static final Kept NOTHING = new Kept(0, Hash.of(new TreeHash().empty()), 0);

    /** Returns the segment that holds the last entry. */
    long segment() {
        return size == 0 ? 0 : StationFolder.segmentOf(size - 1);
    }
}
