package wickbench.api.journal;

import java.util.List;

/**
 * All that is needed to prove an entry without this program.
 *
 * @param line the entry as it stands in its file, without the line end
 * @param leaf SHA-256 of a zero byte and the line
 * @param size entries of the tree in which it is proved
 * @param root its root
 * @param inclusion the hashes from the leaf's neighbour up (RFC 9162 §2.1.3)
 * @param checkpoint the newest checkpoint of the station
 * @param consistency what leads from {@code root} to the root of the checkpoint (RFC 9162 §2.1.4); empty when they are one tree
 * @param publicKey the raw Ed25519 key that signs, in base64
 */
public record EntryProof(
        EntryRef entry,
        String line,
        Hash leaf,
        long size,
        Hash root,
        List<Hash> inclusion,
        Checkpoint checkpoint,
        List<Hash> consistency,
        String publicKey) {
    public EntryProof {
        inclusion = List.copyOf(inclusion);
        consistency = List.copyOf(consistency);
    }
}
