package wickbench.api.journal;

import java.util.List;
import wickbench.api.json.Json;

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

    /** Returns it as people are given it, in the form {@code proof-1}. */
    public Json.Obj json() {
        return Json.object()
                .with("entry", entry.toString())
                .with("line", line)
                .with("index", entry.seq())
                .with("leaf", leaf.hex())
                .with("size", size)
                .with("root", root.hex())
                .with("inclusion", hashes(inclusion))
                .with("consistency", hashes(consistency))
                .with("checkpoint", checkpoint.json())
                .with("public_key", publicKey);
    }

    private static Json hashes(List<Hash> hashes) {
        return Json.texts(hashes.stream().map(Hash::hex).toList());
    }
}
