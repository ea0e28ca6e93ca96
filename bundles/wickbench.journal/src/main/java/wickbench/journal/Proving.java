package wickbench.journal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Comparison;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryProof;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.journal.Proofs;
import wickbench.api.journal.StationId;
import wickbench.api.progress.Progress;
import wickbench.api.report.WholeFolder;
import wickbench.proof.Digest;

/** Proves what the stations of a home hold. */
final class Proving implements Proofs, Closeable {
    private final Layout layout;
    private final boolean writable;
    private final Function<StationId, Optional<Station>> stations;
    private final Runnable seal;
    private final Map<StationId, StationTree> trees = new HashMap<>();

    /**
     * @param writable whether hashes may be kept in the home; elsewhere they last as long as the program
     * @param seal signs what this station holds now, where it can
     */
    Proving(Layout layout, boolean writable, Function<StationId, Optional<Station>> stations, Runnable seal) {
        this.layout = layout;
        this.writable = writable;
        this.stations = stations;
        this.seal = seal;
    }

    @Override
    public EntryProof prove(EntryRef ref, OptionalLong against) {
        try {
            seal.run();
            Station station = station(ref.station());
            Entry entry =
                    station.reading().entry(station.kept(), ref.seq()).orElseThrow(() -> refusal("proof.absent", ref));
            Seal newest = newest(station, ref);
            long size = against.orElse(newest.size());
            if (size > newest.size() || size <= ref.seq()) {
                throw against.isPresent()
                        ? refusal("proof.against", ref, size, newest.size())
                        : refusal("proof.unsealed", ref);
            }
            return prove(station, entry, newest, size);
        } catch (IOException e) {
            throw failed(e);
        }
    }

    private EntryProof prove(Station station, Entry entry, Seal newest, long size) throws IOException {
        EntryRef ref = entry.ref();
        StationTree tree = tree(station);
        StationTree.Linked linked = tree.link(size, newest);
        List<Digest> path = tree.inclusion(
                        ref.seq(), size, new Digest(entry.leaf().hex()), linked.root())
                .path();
        return new EntryProof(
                ref,
                station.reading().line(station.kept(), ref.seq()).orElseThrow(),
                entry.leaf(),
                size,
                hash(linked.root()),
                path.stream().map(Proving::hash).toList(),
                newest.checkpoint(ref.station()),
                linked.proof().path().stream().map(Proving::hash).toList(),
                station.founded().key().base64());
    }

    @Override
    public Comparison compare(String checkpoint) {
        Optional<Claim> claim = Claim.read(checkpoint);
        if (claim.isEmpty()) {
            return Comparing.say(Comparison.Result.UNREADABLE, false);
        }
        try {
            seal.run();
            Optional<Station> station = stations.apply(claim.get().station());
            Optional<Seal> newest = station.flatMap(Station::newest);
            return newest.isEmpty()
                    ? Comparing.say(
                            Comparison.Result.UNKNOWN_STATION,
                            false,
                            claim.get().station())
                    : new Comparing(station.get(), newest.get(), tree(station.get())).compare(claim.get());
        } catch (IOException e) {
            throw failed(e);
        }
    }

    @Override
    public Checkpoint exportTiles(StationId id, Path folder, Progress progress) {
        try {
            seal.run();
            Station station = station(id);
            Seal newest = newest(station, id);
            new TileExport(station, newest, tree(station), progress).write(folder.toAbsolutePath());
            return newest.checkpoint(id);
        } catch (IOException e) {
            throw Say.failed(Say.words("failed.write", folder, EntryFiles.reason(e)));
        }
    }

    private Station station(StationId id) {
        return stations.apply(id).orElseThrow(() -> refusal("proof.absent", id));
    }

    private static Seal newest(Station station, Object what) {
        return station.newest().orElseThrow(() -> refusal("proof.unsealed", what));
    }

    private synchronized StationTree tree(Station station) throws IOException {
        StationId id = station.folder().station();
        StationTree known = trees.get(id);
        if (known == null) {
            known = new StationTree(station, writable ? layout.tree(id) : Files.createTempDirectory("wickbench-tree-"));
            trees.put(id, known);
        }
        return known;
    }

    private static Hash hash(Digest digest) {
        return new Hash(digest.hex());
    }

    private static Refusal refusal(String code, Object... values) {
        return new Refusal(code, Say.words(code, values));
    }

    private Refusal failed(IOException e) {
        return Say.failed(Say.words("failed.read", layout.home(), EntryFiles.reason(e)));
    }

    @Override
    public synchronized void close() throws IOException {
        for (StationTree tree : trees.values()) {
            tree.close();
            if (!writable) {
                WholeFolder.remove(tree.folder());
            }
        }
        trees.clear();
    }
}
