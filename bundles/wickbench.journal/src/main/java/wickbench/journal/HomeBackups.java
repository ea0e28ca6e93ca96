package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import wickbench.api.backup.Backup;
import wickbench.api.backup.BackupPlan;
import wickbench.api.backup.BackupState;
import wickbench.api.backup.Backups;
import wickbench.api.backup.Restored;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.StationId;
import wickbench.api.progress.Progress;
import wickbench.api.report.WholeFolder;

/** The back-ups of a home, for a program with or without a framework. */
public final class HomeBackups implements Backups {
    private static final DateTimeFormatter NAME =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

    private final Home home;
    private final Supplier<JournalFolder> journal;
    private final Disk disk = new RealDisk();

    /** @param journal opens the journal of the home where it is not open yet; restoring never asks for it */
    public HomeBackups(Home home, Supplier<JournalFolder> journal) {
        this.home = home;
        this.journal = journal;
    }

    @Override
    public synchronized Backup backUp(Path folder, Progress progress) {
        Path target = folder.toAbsolutePath().normalize();
        try {
            if (target.startsWith(home.folder())) {
                throw new Refusal("backup.folder", Say.words("backup.inside", target));
            }
            Folders.needEmpty(target, "backup.folder");
            Cut cut = journal.get().cut();
            Instant now = home.clock().instant().truncatedTo(ChronoUnit.MILLIS);
            Backup made = new BackupWriter(home.folder(), cut, progress).write(target, now);
            BackupFile.read(home.folder()).with(made).write(disk, home.folder());
            return made;
        } catch (IOException e) {
            throw Say.failed(Say.words("failed.write", target, EntryFiles.reason(e)));
        }
    }

    @Override
    public synchronized Backup backUpInto(Path folder, Progress progress) {
        return backUp(folder.resolve(station() + "-" + NAME.format(home.clock().instant())), progress);
    }

    private StationId station() {
        return journal.get()
                .founding()
                .orElseThrow(() -> new Refusal("backup.unfounded", Say.words("backup.unfounded")))
                .station();
    }

    @Override
    public synchronized Backup backUpByPlan(Progress progress) {
        BackupPlan plan =
                file().plan().orElseThrow(() -> new Refusal("backup.plan", Say.words("backup.plan", home.folder())));
        Backup made = backUpInto(plan.folder(), progress);
        try {
            removeOld(plan, station());
        } catch (IOException e) {
            throw Say.failed(Say.words("failed.write", plan.folder(), EntryFiles.reason(e)));
        }
        return made;
    }

    private static void removeOld(BackupPlan plan, StationId station) throws IOException {
        List<Backup> mine = new ArrayList<>();
        try (Stream<Path> folders = Files.list(plan.folder())) {
            for (Path folder : folders.filter(path -> Files.isRegularFile(path.resolve(Manifest.FILE)))
                    .toList()) {
                Manifest manifest = BackupReader.open(folder).manifest();
                if (manifest.checkpoint().station().equals(station)) {
                    mine.add(new Backup(folder, manifest.made(), manifest.checkpoint()));
                }
            }
        }
        mine.sort(Comparator.comparing(Backup::made).reversed());
        for (Backup old : mine.subList(Math.min(plan.keep(), mine.size()), mine.size())) {
            // without its list first, so that what a crash leaves does not look like a back-up
            Files.delete(old.folder().resolve(Manifest.FILE));
            WholeFolder.remove(old.folder());
        }
    }

    @Override
    public synchronized void plan(Optional<BackupPlan> plan) {
        try {
            disk.makeFolder(home.folder());
            BackupFile.read(home.folder()).with(plan).write(disk, home.folder());
        } catch (IOException e) {
            throw Say.failed(Say.words("failed.write", home.folder(), EntryFiles.reason(e)));
        }
    }

    @Override
    public BackupState state() {
        BackupFile file = file();
        Instant now = home.clock().instant();
        Optional<Duration> age = file.last()
                .map(last -> Duration.between(last.made(), now))
                // a clock that was set back makes no back-up younger than new
                .map(between -> between.isNegative() ? Duration.ZERO : between);
        boolean due = file.plan()
                .filter(plan ->
                        age.filter(old -> old.compareTo(plan.every()) < 0).isEmpty())
                .isPresent();
        return new BackupState(file.plan(), file.last(), age, due);
    }

    private BackupFile file() {
        try {
            return BackupFile.read(home.folder());
        } catch (IOException e) {
            throw Say.failed(Say.words("failed.read", home.folder(), EntryFiles.reason(e)));
        }
    }

    @Override
    public Restored restore(Path backup, Path target, Optional<String> known, Progress progress) {
        Path folder = target.toAbsolutePath().normalize();
        try {
            Restored made = BackupReader.open(backup).restore(folder, progress);
            return known.isEmpty() ? made : compared(made, known.get());
        } catch (IOException e) {
            throw Say.failed(Say.words("failed.write", folder, EntryFiles.reason(e)));
        }
    }

    private static Restored compared(Restored made, String known) {
        try (JournalFolder restored = JournalFolder.open(new HomeFolder(made.folder()), entries -> {})) {
            return new Restored(
                    made.folder(),
                    made.from(),
                    made.verification(),
                    Optional.of(restored.proofs().compare(known)));
        }
    }
}
