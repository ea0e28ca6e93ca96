package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wickbench.api.backup.Backup;
import wickbench.api.backup.Restored;
import wickbench.api.home.HomeFolder;
import wickbench.api.progress.Progress;

/** A home, the folder for its back-up, and the folder in which it is made again; neither of the two is there at first. */
record CopiedHome(Path home, Path backup, Path target) {
    /** How many notes the home holds, beside the entry that founds it. */
    static final int NOTES = 50;

    /** Records a home below a folder, with a person's file and an index. */
    static CopiedHome recorded(Path folder) throws IOException {
        Path home = folder.resolve("home");
        Recorded.closed(home, NOTES);
        Files.createDirectories(home.resolve("people/ada"));
        Files.writeString(home.resolve("people/ada/" + "0".repeat(64) + ".json"), "{}");
        Files.createDirectories(home.resolve("index/h2"));
        Files.writeString(home.resolve("index/h2/house.mv.db"), "can be made again");
        return new CopiedHome(home, folder.resolve("backup"), folder.resolve("new"));
    }

    Backup backUp() {
        try (JournalFolder journal = Recorded.open(home)) {
            return backUp(journal, Progress.NONE);
        }
    }

    Backup backUp(JournalFolder journal, Progress progress) {
        return new HomeBackups(new HomeFolder(home), () -> journal).backUp(backup, progress);
    }

    Restored restore(Optional<String> known) {
        return restore(known, Progress.NONE);
    }

    Restored restore(Optional<String> known, Progress progress) {
        HomeBackups nowhere = new HomeBackups(new HomeFolder(target), () -> {
            throw new AssertionError("restoring opens no journal");
        });
        return nowhere.restore(backup, target, known, progress);
    }

    /** Lists all files below a folder by their path in it. */
    static List<String> files(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(Files::isRegularFile)
                    .map(path -> folder.relativize(path).toString())
                    .sorted()
                    .toList();
        }
    }
}
