package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * What a disk may hold after a power cut: all that was forced, and of the rest whatever chance leaves.
 *
 * <p>Of a write that was not forced each sector of 512 bytes may be lost by itself; where the file is longer nevertheless, zeros
 * stand there. Later writes may be there without earlier ones, names without their files' bytes, and bytes without their names.
 */
final class CutDisk {
    private static final int SECTOR = 512;
    private final Map<Integer, byte[]> forced = new TreeMap<>();
    private final Map<Integer, List<Change.Filled>> fillings = new TreeMap<>();
    private final Map<Path, Integer> names = new TreeMap<>();
    private final List<Path> folders = new ArrayList<>();
    private final List<Change.Named> namings = new ArrayList<>();

    /** What becomes of what was not forced. */
    interface Fate {
        Fate LOST = () -> false;
        Fate KEPT = () -> true;

        boolean kept();

        static Fate by(SplittableRandom chance) {
            return chance::nextBoolean;
        }
    }

    /** Takes the files as they stood before the trace, all of them forced. */
    CutDisk(Path folder, Map<Path, Integer> numbers) throws IOException {
        try (var paths = Files.walk(folder)) {
            paths.filter(Files::isDirectory).forEach(folders::add);
        }
        for (var file : numbers.entrySet()) {
            names.put(file.getKey(), file.getValue());
            forced.put(file.getValue(), Files.readAllBytes(file.getKey()));
        }
    }

    /** Takes the next step of the trace. */
    void take(Change change) {
        if (change instanceof Change.Filled filled) {
            fillings.computeIfAbsent(filled.file(), n -> new ArrayList<>()).add(filled);
        } else if (change instanceof Change.Named named) {
            namings.add(named);
        } else if (change instanceof Change.Forced force) {
            forced.put(force.file(), content(force.file(), Fate.KEPT));
            fillings.remove(force.file());
        } else if (change instanceof Change.FolderForced force) {
            namings.stream()
                    .filter(named -> named.folder().equals(force.path()))
                    .forEach(named -> name(named, names, folders));
            namings.removeIf(named -> named.folder().equals(force.path()));
        }
    }

    /** Tells whether all was forced, so that no chance is left. */
    boolean certain() {
        return fillings.isEmpty() && namings.isEmpty();
    }

    /** Lays what the disk may hold below another folder. */
    void lay(Path from, Path to, Fate fate) throws IOException {
        Map<Path, Integer> left = new TreeMap<>(names);
        List<Path> made = new ArrayList<>(folders);
        namings.stream().filter(named -> fate.kept()).forEach(named -> name(named, left, made));
        for (Path folder : made) {
            Files.createDirectories(to.resolve(from.relativize(folder).toString()));
        }
        for (var file : left.entrySet()) {
            Path path = to.resolve(from.relativize(file.getKey()).toString());
            // a file in a folder whose own name was lost is lost with it
            if (Files.isDirectory(path.getParent())) {
                Files.write(path, content(file.getValue(), fate));
            }
        }
    }

    private static void name(Change.Named change, Map<Path, Integer> names, List<Path> folders) {
        if (change instanceof Change.FolderMade made) {
            folders.add(made.path());
        } else if (change instanceof Change.FileMade made) {
            names.put(made.path(), made.file());
        } else if (change instanceof Change.Removed removed) {
            names.remove(removed.path());
        } else if (change instanceof Change.Renamed renamed && names.containsKey(renamed.from())) {
            names.put(renamed.to(), names.remove(renamed.from()));
        }
    }

    private byte[] content(int file, Fate fate) {
        byte[] bytes = forced.getOrDefault(file, new byte[0]);
        for (Change.Filled change : fillings.getOrDefault(file, List.of())) {
            if (change instanceof Change.Wrote wrote) {
                bytes = written(bytes, wrote, fate);
            } else if (change instanceof Change.Truncated cut && fate.kept()) {
                bytes = Arrays.copyOf(bytes, (int) cut.length());
            }
        }
        return bytes;
    }

    private static byte[] written(byte[] before, Change.Wrote wrote, Fate fate) {
        byte[] bytes = before;
        int start = (int) wrote.at();
        int end = start + wrote.bytes().length;
        for (int at = start; at < end; at = next(at, end)) {
            int stop = next(at, end);
            // kept, lost, or lost with the file as long as if it were there
            if (fate.kept()) {
                bytes = Arrays.copyOf(bytes, Math.max(bytes.length, stop));
                System.arraycopy(wrote.bytes(), at - start, bytes, at, stop - at);
            } else if (fate.kept()) {
                bytes = Arrays.copyOf(bytes, Math.max(bytes.length, stop));
            }
        }
        return bytes;
    }

    private static int next(int at, int end) {
        return Math.min(end, (at / SECTOR + 1) * SECTOR);
    }
}
