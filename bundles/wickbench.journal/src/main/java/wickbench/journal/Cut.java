package wickbench.journal;

import java.nio.file.Path;
import wickbench.api.journal.Checkpoint;

/**
 * How far the files of an open journal go that hold what a checkpoint covers.
 *
 * @param checkpoint over all that lies within the bounds
 */
record Cut(StationFolder folder, Verifier.Bounds bounds, Checkpoint checkpoint) {

    /** Returns how many bytes of a file of the home belong to the copy; 0 when it came later. */
    long length(Path file) {
        String name = file.getFileName().toString();
        if (!file.startsWith(folder.folder())) {
            return file.toFile().length();
        }
        if (file.equals(folder.checkpoints())) {
            return bounds.checkpoints();
        }
        return StationFolder.number(name)
                .map(segment -> bounds.end(folder, segment))
                .orElseGet(() -> file.toFile().length());
    }
}
