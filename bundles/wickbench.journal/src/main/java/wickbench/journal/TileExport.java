package wickbench.journal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import wickbench.api.check.Refusal;
import wickbench.api.progress.Progress;
import wickbench.api.report.WholeFolder;

/**
 * Writes a station's journal as C2SP tlog-tiles: {@code checkpoint}, {@code tile/LEVEL/…} with 256 hashes each and
 * {@code tile/entries/…} with 256 entries each; what is not full yet in {@code ….p/WIDTH}.
 *
 * <p>Everything is written beside the folder wanted and renamed at the end, so that half an export never looks like one.
 */
final class TileExport {
    private static final int WIDTH = 256;
    private static final int WIDTH_BITS = 8;
    /** Two bytes say how long an entry is. */
    private static final int LONGEST = 0xFFFF;

    private final Station station;
    private final Seal seal;
    private final StationTree tree;
    private final Progress progress;
    private final ByteArrayOutputStream bundle = new ByteArrayOutputStream();

    TileExport(Station station, Seal seal, StationTree tree, Progress progress) {
        this.station = station;
        this.seal = seal;
        this.tree = tree;
        this.progress = progress;
    }

    void write(Path folder) throws IOException {
        Folders.needEmpty(folder, "export.folder");
        new WholeFolder(folder).write(beside -> {
            tree.under(seal, progress, files -> tiles(files, beside.resolve("tile")));
            entries(beside.resolve("tile").resolve("entries"));
            return Files.writeString(beside.resolve("checkpoint"), seal.note(), StandardCharsets.UTF_8);
        });
    }

    private void tiles(TreeFiles files, Path tiles) throws IOException {
        for (int level = 0; seal.size() >>> WIDTH_BITS * level > 0; level++) {
            long hashes = seal.size() >>> WIDTH_BITS * level;
            Path folder = tiles.resolve(Integer.toString(level));
            for (long from = 0; from < hashes; from += WIDTH) {
                int width = (int) Math.min(WIDTH, hashes - from);
                place(folder, from / WIDTH, width, files.nodes(WIDTH_BITS * level, from, width));
            }
        }
    }

    private void entries(Path folder) throws IOException {
        long[] place = {0};
        station.reading().lines(station.kept(), 0, seal.size(), lines -> {
            put(lines, place[0]);
            place[0]++;
            if (place[0] % WIDTH == 0 || place[0] == seal.size()) {
                int width = (int) ((place[0] - 1) % WIDTH + 1);
                place(folder, (place[0] - 1) / WIDTH, width, bundle.toByteArray());
                bundle.reset();
                if (!progress.at(place[0], seal.size())) {
                    throw new Refusal("export.stopped", Say.words("export.stopped"));
                }
            }
            return true;
        });
    }

    private void put(Lines line, long place) {
        int length = line.length();
        if (length > LONGEST) {
            throw new Refusal("export.too-long", Say.words("export.too-long", place, length, LONGEST));
        }
        bundle.write(length >>> Byte.SIZE);
        bundle.write(length);
        bundle.write(line.buffer(), line.from(), length);
    }

    private static void place(Path folder, long number, int width, byte[] content) throws IOException {
        Path file = folder.resolve(width == WIDTH ? path(number) : path(number) + ".p/" + width);
        Files.createDirectories(file.getParent());
        Files.write(file, content);
    }

    /** Returns a tile's number in groups of three digits, all but the last marked by an x: 1234067 is x001/x234/067. */
    static String path(long number) {
        String path = String.format(Locale.ROOT, "%03d", number % 1000);
        for (long rest = number / 1000; rest > 0; rest /= 1000) {
            path = String.format(Locale.ROOT, "x%03d/", rest % 1000) + path;
        }
        return path;
    }
}
