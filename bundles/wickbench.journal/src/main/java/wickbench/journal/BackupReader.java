package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.backup.Backup;
import wickbench.api.backup.Restored;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;
import wickbench.api.report.WholeFolder;

/**
 * Makes a home of a back-up: copies and proves every file beside the home, verifies the whole journal there, and renames last.
 *
 * <p>A home that already holds something is never touched, and nothing looks like a home before it was verified.
 */
final class BackupReader {
    private final Path folder;
    private final Manifest manifest;

    private BackupReader(Path folder, Manifest manifest) {
        this.folder = folder;
        this.manifest = manifest;
    }

    /**
     * Opens a back-up.
     *
     * @throws Refusal {@code restore.none} when there is none
     */
    static BackupReader open(Path folder) throws IOException {
        Path file = folder.resolve(Manifest.FILE);
        if (!Files.isRegularFile(file)) {
            throw new Refusal("restore.none", Say.words("restore.none", folder));
        }
        return new BackupReader(
                folder, Manifest.read(file.toString(), Files.readAllBytes(file)).orRefuse());
    }

    Manifest manifest() {
        return manifest;
    }

    Restored restore(Path home, Progress progress) throws IOException {
        Folders.needEmptyHome(home);
        return new WholeFolder(home).write(beside -> {
            long total =
                    manifest.files().stream().mapToLong(Manifest.Item::bytes).sum();
            FileCopy copy = new FileCopy(total, progress);
            copy(copy, beside);
            Verification shown = verify(beside, copy.second());
            Files.write(
                    beside.resolve(RestoredMark.FILE), RestoredMark.of(manifest).bytes());
            Backup from = new Backup(folder, manifest.made(), manifest.checkpoint());
            return new Restored(home, from, shown, Optional.empty());
        });
    }

    private void copy(FileCopy copy, Path beside) throws IOException {
        List<String> damaged = new ArrayList<>();
        for (Manifest.Item item : manifest.files()) {
            if (!isBelow(beside, item.path()) || !copied(copy, item, beside)) {
                damaged.add(item.path());
            }
        }
        if (!damaged.isEmpty()) {
            throw new Refusal("restore.damaged", Say.words("restore.damaged", folder, damaged.size(), damaged.get(0)));
        }
    }

    /** Tells whether a path leads nowhere else, whatever a stranger wrote into the list. */
    private static boolean isBelow(Path folder, String path) {
        return folder.resolve(path).normalize().startsWith(folder)
                && !folder.resolve(path).normalize().equals(folder);
    }

    private boolean copied(FileCopy copy, Manifest.Item item, Path beside) throws IOException {
        Path from = folder.resolve(BackupWriter.HOME).resolve(item.path());
        try {
            return from.toFile().length() == item.bytes()
                    && copy.copy(from, item.bytes(), beside, item.path()).equals(item);
        } catch (NoSuchFileException e) {
            return false;
        }
    }

    private Verification verify(Path home, Progress second) throws IOException {
        StationFolder station = new Layout(home).station(manifest.checkpoint().station());
        Verification shown =
                new Verifier(new Layout(home), station, Verifier.Bounds.of(station, Optional.empty()), second).run();
        if (!shown.complete()) {
            throw new Refusal("backup.stopped", Say.words("backup.stopped"));
        }
        if (!shown.holds()
                || shown.entries() != manifest.checkpoint().size()
                || !shown.root().equals(manifest.checkpoint().root())) {
            String first = shown.findings().stream()
                    .map(Verification.Broken::text)
                    .findFirst()
                    .orElseGet(() -> Say.words("restore.other"));
            throw new Refusal("restore.broken", Say.words("restore.broken", folder, first));
        }
        return shown;
    }
}
