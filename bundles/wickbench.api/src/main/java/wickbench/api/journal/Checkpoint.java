package wickbench.api.journal;

import wickbench.api.json.Json;

/**
 * A signed statement of what a station's journal holds.
 *
 * @param station whose journal
 * @param size how many entries
 * @param root RFC 9162 Merkle root over them
 * @param note the signed note (C2SP tlog-checkpoint and signed-note, Ed25519), as it stands in the file
 */
public record Checkpoint(StationId station, long size, Hash root, String note) {

    /** Returns it for machines. */
    public Json.Obj json() {
        return Json.object()
                .with("station", station.value())
                .with("size", size)
                .with("root", root.hex())
                .with("note", note);
    }
}
