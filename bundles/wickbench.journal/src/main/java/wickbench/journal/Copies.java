package wickbench.journal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentNavigableMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Seen;
import wickbench.api.journal.StationId;

/** The copies of other stations' journals that this home holds. */
final class Copies implements Closeable {
    private final Disk disk;
    private final Layout layout;
    private final ConcurrentNavigableMap<StationId, Copy> copies = new ConcurrentSkipListMap<>();

    private Copies(Disk disk, Layout layout) {
        this.disk = disk;
        this.layout = layout;
    }

    /**
     * Opens all copies; one that contradicts its seal is put aside, to be read from the share again.
     *
     * @param notices hears, in words, of those put aside
     */
    static Copies open(Disk disk, Layout layout, Consumer<String> notices) throws IOException {
        Copies copies = new Copies(disk, layout);
        for (Path folder : folders(layout)) {
            Optional<CopyMark> mark = CopyMark.read(folder);
            if (mark.isPresent()) {
                copies.open(new StationId(folder.getFileName().toString()), mark.get(), notices);
            }
        }
        return copies;
    }

    private static List<Path> folders(Layout layout) throws IOException {
        if (!Files.isDirectory(layout.stations())) {
            return List.of();
        }
        try (Stream<Path> folders = Files.list(layout.stations())) {
            return folders.filter(folder -> Files.exists(CopyMark.file(folder))
                            && !folder.getFileName().toString().contains("."))
                    .sorted()
                    .toList();
        }
    }

    private void open(StationId station, CopyMark mark, Consumer<String> notices) throws IOException {
        StationFolder folder = layout.station(station);
        try {
            Copy.open(disk, folder, mark).ifPresent(copy -> copies.put(station, copy));
        } catch (Refusal e) {
            Path aside = aside(folder.folder());
            Files.move(folder.folder(), aside);
            notices.accept(Say.words("copy.aside", station, aside, e.getMessage()));
        }
    }

    private static Path aside(Path folder) {
        int number = 1;
        Path aside = folder.resolveSibling(folder.getFileName() + ".aside-" + number);
        while (Files.exists(aside)) {
            number++;
            aside = folder.resolveSibling(folder.getFileName() + ".aside-" + number);
        }
        return aside;
    }

    /** Begins the copy of a station; nobody sees it before its first entries are here. */
    Copy begin(Founded founded) throws IOException {
        return Copy.begin(disk, layout.station(founded.founding().station()), founded);
    }

    void keep(Copy copy) {
        copies.put(copy.station().folder().station(), copy);
    }

    List<StationId> stations() {
        return List.copyOf(copies.keySet());
    }

    Optional<Copy> copy(StationId station) {
        return Optional.ofNullable(copies.get(station));
    }

    /**
     * Returns a copy to add to; one under which the disk failed is opened anew first, as after a crash.
     *
     * <p>Else no line could follow one that is on the disk without its checkpoint, for as long as the program runs.
     */
    Optional<Copy> sound(StationId station) throws IOException {
        Optional<Copy> known = copy(station);
        if (known.filter(Copy::failed).isPresent()) {
            known.get().close();
            StationFolder folder = layout.station(station);
            Copy.open(disk, folder, known.get().mark())
                    .ifPresentOrElse(again -> copies.put(station, again), () -> copies.remove(station));
        }
        return copy(station);
    }

    Optional<Station> station(StationId station) {
        return copy(station).map(Copy::station);
    }

    /** Returns what has come in since this station's own journal said last what it had seen. */
    List<Seen> untold() {
        List<Seen> untold = new ArrayList<>();
        copies.forEach((station, copy) -> {
            Kept kept = copy.station().kept();
            if (kept.size() > copy.told()) {
                untold.add(new Seen(station, kept.size(), kept.leaf()));
            }
        });
        return untold;
    }

    /** Remembers what was said; a mark that cannot be written makes it only said once more. */
    void tell(List<Seen> told, Consumer<String> notices) {
        for (Seen seen : told) {
            try {
                copies.get(seen.station()).tell(seen.size());
            } catch (IOException e) {
                notices.accept(Say.words("failed.write", layout.home(), EntryFiles.reason(e)));
            }
        }
    }

    @Override
    public void close() throws IOException {
        for (Copy copy : copies.values()) {
            copy.close();
        }
    }
}
