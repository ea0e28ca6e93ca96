package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import wickbench.api.backup.Backup;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;
import wickbench.api.report.WholeFolder;

/**
 * Copies a home while it may be recorded in.
 *
 * <p>First the journal is signed and its lengths are taken; what is recorded from then on is not in the copy. All else is copied
 * afterwards: a file that an entry names was on the disk before the entry, so none that the copy needs is missing. The copy is
 * verified and forced beside its place, and renamed last; whatever goes wrong before leaves nothing that looks like a back-up.
 */
final class BackupWriter {
    static final String HOME = "home";
    /** Belongs to the running program, or can be made again. */
    private static final Set<String> LEFT_OUT = Set.of("lock", "holder.json", "door", "index", "tree");

    private final Path home;
    private final Cut cut;
    private final Progress progress;

    BackupWriter(Path home, Cut cut, Progress progress) {
        this.home = home;
        this.cut = cut;
        this.progress = progress;
    }

    Backup write(Path folder, Instant now) throws IOException {
        new WholeFolder(folder).write(beside -> {
            Owners.closeFolder(beside);
            List<Path> files = files();
            FileCopy copy = new FileCopy(files.stream().mapToLong(cut::length).sum(), progress);
            List<Manifest.Item> items = copy(files, copy, Files.createDirectory(beside.resolve(HOME)));
            verify(beside.resolve(HOME), copy.second());
            return Files.write(beside.resolve(Manifest.FILE), new Manifest(now, cut.checkpoint(), items).bytes());
        });
        return new Backup(folder, now, cut.checkpoint());
    }

    /** Returns the files to copy, the lists of checkpoints before the entries that they cover. */
    private List<Path> files() throws IOException {
        return PlainFiles.below(home).stream().filter(this::isKept).toList();
    }

    private boolean isKept(Path path) {
        String name = path.getFileName().toString();
        return !LEFT_OUT.contains(home.relativize(path).getName(0).toString())
                && !name.endsWith(".new")
                && !name.endsWith(".part");
    }

    private List<Manifest.Item> copy(List<Path> files, FileCopy copy, Path target) throws IOException {
        List<Manifest.Item> items = new ArrayList<>();
        for (Path file : files) {
            String name = home.relativize(file).toString().replace('\\', '/');
            long length = cut.length(file);
            try {
                if (file.equals(cut.folder().note())) {
                    items.add(note(target, name));
                } else if (length > 0) {
                    items.add(copy.copy(file, length, target, name));
                }
            } catch (NoSuchFileException e) {
                // a person who was forgotten meanwhile, or a file that was replaced; of the journal, verifying misses
                // it
                continue;
            }
        }
        return items;
    }

    /** Writes the checkpoint as it was signed; in the home a newer one may have taken its place. */
    private Manifest.Item note(Path target, String name) throws IOException {
        Path from = Files.write(
                target.resolve("note.part"), cut.checkpoint().note().getBytes(java.nio.charset.StandardCharsets.UTF_8));
        Manifest.Item item =
                new FileCopy(0, Progress.NONE).copy(from, from.toFile().length(), target, name);
        Files.delete(from);
        return item;
    }

    private void verify(Path copied, Progress second) throws IOException {
        StationFolder folder = new Layout(copied).station(cut.checkpoint().station());
        Verification shown = new Verifier(
                        new Layout(copied), folder, Verifier.Bounds.of(folder, java.util.Optional.empty()), second)
                .run();
        if (!shown.complete()) {
            throw new Refusal("backup.stopped", Say.words("backup.stopped"));
        }
        if (!shown.holds() || !shown.root().equals(cut.checkpoint().root())) {
            String first = shown.findings().stream()
                    .map(Verification.Broken::text)
                    .findFirst()
                    .orElse("");
            throw new Refusal("backup.broken", Say.words("backup.broken", first));
        }
    }
}
