package wickbench.ledger.pack;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.EntryProof;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.journal.Journal;
import wickbench.api.journal.Proofs;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.ledger.papers.Packing.Sealed;

/** Writes entries with their proofs, a file for each station, all of a station against one checkpoint; and its key. */
final class Proved {
    /** An Ed25519 key before its 32 bytes (RFC 8410). */
    private static final byte[] KEY_HEAD = HexFormat.of().parseHex("302a300506032b6570032100");

    private final Journal journal;
    private final Proofs proofs;
    private final PackFiles files;
    private final List<Sealed> seals = new ArrayList<>();
    private final List<Json.Obj> stations = new ArrayList<>();

    Proved(Journal journal, Proofs proofs, PackFiles files) {
        this.journal = journal;
        this.proofs = proofs;
        this.files = files;
    }

    /** Called for each entry that was written; stops the work by throwing. */
    interface Watch {
        void wrote(EntryRef ref);
    }

    void write(Iterable<EntryRef> entries, Watch watch) throws IOException {
        Map<StationId, List<EntryRef>> byStation = new TreeMap<>();
        entries.forEach(ref -> byStation
                .computeIfAbsent(ref.station(), none -> new ArrayList<>())
                .add(ref));
        for (Map.Entry<StationId, List<EntryRef>> of : new LinkedHashMap<>(byStation).entrySet()) {
            station(of.getKey(), of.getValue(), watch);
        }
    }

    private void station(StationId station, List<EntryRef> entries, Watch watch) throws IOException {
        Checkpoint checkpoint = journal.checkpoint(station)
                .orElseThrow(() -> new Refusal("pack.unsealed", PackWords.get("pack.unsealed", station)));
        EntryProof[] last = new EntryProof[1];
        files.add("entries/" + station + ".jsonl", out -> {
            for (EntryRef ref : entries) {
                last[0] = proofs.prove(ref, OptionalLong.of(checkpoint.size()));
                line(out, last[0]);
                watch.wrote(ref);
            }
        });
        byte[] key = Base64.getDecoder().decode(last[0].publicKey());
        files.addText("checkpoints/" + station, checkpoint.note());
        files.addText("keys/" + station + ".pem", pem(key));
        Sealed sealed = new Sealed(checkpoint, Hash.ofContent(key));
        seals.add(sealed);
        stations.add(Json.object()
                .with("station", station.value())
                .with("entries", entries.size())
                .with("size", checkpoint.size())
                .with("root", checkpoint.root().hex())
                .with("public_key", last[0].publicKey())
                .with("fingerprint", sealed.fingerprint().hex()));
    }

    private static void line(OutputStream out, EntryProof proof) throws IOException {
        out.write(proof.json().canonical().getBytes(StandardCharsets.UTF_8));
        out.write('\n');
    }

    private static String pem(byte[] key) {
        byte[] whole = new byte[KEY_HEAD.length + key.length];
        System.arraycopy(KEY_HEAD, 0, whole, 0, KEY_HEAD.length);
        System.arraycopy(key, 0, whole, KEY_HEAD.length, key.length);
        return "-----BEGIN PUBLIC KEY-----\n" + Base64.getEncoder().encodeToString(whole)
                + "\n-----END PUBLIC KEY-----\n";
    }

    List<Sealed> seals() {
        return seals;
    }

    List<Json.Obj> stations() {
        return stations;
    }
}
