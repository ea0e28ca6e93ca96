package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;

/**
 * The body of {@code station.forked}: two histories were signed by one station's key, as when a disk was copied and both
 * machines went on.
 *
 * @param here the checkpoint under which this station has taken one of them
 * @param there the checkpoint over the other, which is kept in {@code folder} as evidence and not taken
 */
record Fork(StationId station, Optional<Seal> here, Seal there, String folder) {
    static final String KIND = "station.forked";
    static final int V = 1;

    Json.Obj body() {
        return Json.object()
                .with("station", station.value())
                .withText("taken", here.map(Seal::note))
                .with("other", there.note())
                .with("folder", folder);
    }

    /** Copies the files of a branch beside the copy of the station; false when they were kept before. */
    static boolean keep(Disk disk, StationFolder there, Path evidence) throws IOException {
        if (Files.exists(evidence)) {
            return false;
        }
        Path beside = evidence.resolveSibling(evidence.getFileName() + ".new");
        disk.makeFolder(beside);
        try (Stream<Path> files = Files.list(there.folder())) {
            List<Path> journal = files.filter(Files::isRegularFile)
                    .filter(file -> !file.getFileName().toString().startsWith(ShareFolder.WRITER))
                    .toList();
            for (Path file : journal) {
                disk.place(beside.resolve(file.getFileName().toString()), Files.readAllBytes(file));
            }
        }
        Files.move(beside, evidence);
        disk.forceFolder(evidence.getParent());
        return true;
    }
}
