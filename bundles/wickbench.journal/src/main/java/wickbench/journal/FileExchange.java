package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import wickbench.api.journal.Hash;
import wickbench.api.journal.SharedFiles;
import wickbench.api.journal.StationId;

/** Fetches the files beside the journal that are wanted here, and shows the others those that are here; for one thread. */
final class FileExchange {
    private static final Pattern NAMED = Pattern.compile("[0-9a-f]{64}\\.[a-z]+");
    private final Disk disk;
    private final Path home;
    private final ShareFolder share;
    private final StationId own;

    FileExchange(Disk disk, Path home, ShareFolder share, StationId own) {
        this.disk = disk;
        this.home = home;
        this.share = share;
        this.own = own;
    }

    void exchange(SharedFiles files) throws IOException {
        for (String path : files.wanted()) {
            fetch(files.folder(), path);
        }
        show(files.folder());
    }

    /** Makes the files there those that are here. */
    void show(String folder) throws IOException {
        Path station = share.of(own).folder();
        if (!Files.isDirectory(station)) {
            // the share went away meanwhile: nothing is made where it was mounted
            throw new NotDirectoryException(station.toString());
        }
        mirror(home.resolve(folder), station.resolve(folder));
    }

    private void fetch(String folder, String path) throws IOException {
        for (StationId station : share.stations()) {
            Path there = share.of(station).folder().resolve(folder).resolve(path);
            if (Files.isRegularFile(there)) {
                byte[] content = Files.readAllBytes(there);
                // one that is still on its way, or another's, has another hash than its name
                if (there.getFileName()
                        .toString()
                        .startsWith(Hash.ofContent(content).hex())) {
                    place(home.resolve(folder).resolve(path), content);
                    return;
                }
            }
        }
    }

    private void place(Path file, byte[] content) throws IOException {
        disk.makeFolder(file.getParent());
        disk.place(file, content);
    }

    /** Makes the files there those that are here; what was removed here, as with a person forgotten, goes there too. */
    private void mirror(Path here, Path there) throws IOException {
        Set<Path> ours = named(here);
        Set<Path> theirs = named(there);
        for (Path file : ours) {
            if (!theirs.contains(file)) {
                place(there.resolve(file.toString()), Files.readAllBytes(here.resolve(file.toString())));
            }
        }
        for (Path file : theirs) {
            if (!ours.contains(file)) {
                Files.deleteIfExists(there.resolve(file.toString()));
            }
        }
    }

    private static Set<Path> named(Path folder) throws IOException {
        return PlainFiles.below(folder).stream()
                .filter(file -> NAMED.matcher(file.getFileName().toString()).matches())
                .map(folder::relativize)
                .collect(Collectors.toSet());
    }
}
