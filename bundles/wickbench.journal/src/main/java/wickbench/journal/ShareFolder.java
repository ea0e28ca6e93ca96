package wickbench.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import wickbench.api.journal.StationId;
import wickbench.api.report.WholeFolder;

/**
 * The folder through which stations read one another's journals: a folder for each station, in the form of its own.
 *
 * <p>The file {@code wickbench-share.json} says that it is one. An empty folder in its place, such as the point where a network drive
 * is mounted, must not be taken for it.
 */
record ShareFolder(Path folder) {
    static final String MARK = "wickbench-share.json";
    static final String WRITER = "writer.json";

    private static final byte[] MARKED =
            "{\"format\":1,\"what\":\"wickbench share\"}\n".getBytes(StandardCharsets.US_ASCII);
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,31}");
    private static final Pattern BRANCH = Pattern.compile("[a-z][a-z0-9-]{0,31}\\.branch-[0-9a-f]{12}");
    private static final Pattern FILES = Pattern.compile(
            "entries-[0-9]{6}\\.jsonl|checkpoints\\.jsonl|checkpoint(\\.new)?|writer\\.json(\\.new)?|[a-z]+");

    /** Makes an empty folder a share; returns whether it is one then. */
    boolean make(Disk disk) throws IOException {
        if (isShare()) {
            return true;
        }
        if (!new WholeFolder(folder).isFree()) {
            return false;
        }
        disk.place(folder.resolve(MARK), MARKED);
        return true;
    }

    boolean isShare() {
        return Files.isRegularFile(folder.resolve(MARK));
    }

    /** @throws IOException when the folder cannot be reached */
    void reach() throws IOException {
        if (!isShare()) {
            throw new NotDirectoryException(folder.toString());
        }
    }

    StationFolder of(StationId station) {
        return new StationFolder(station, folder.resolve(station.value()));
    }

    /** Returns where the branch of a second writer under one name is laid. */
    StationFolder branch(StationId station, String root) {
        return new StationFolder(station, folder.resolve(branchName(station, root)));
    }

    static String branchName(StationId station, String root) {
        return station + ".branch-" + root.substring(0, 12);
    }

    List<StationId> stations() throws IOException {
        return names(NAME).stream().map(StationId::new).toList();
    }

    /** Returns the branches that second writers have laid here, by folder name. */
    List<StationFolder> branches() throws IOException {
        return names(BRANCH).stream()
                .map(name ->
                        new StationFolder(new StationId(name.substring(0, name.indexOf('.'))), folder.resolve(name)))
                .toList();
    }

    private List<String> names(Pattern form) throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.filter(Files::isDirectory)
                    .map(path -> path.getFileName().toString())
                    .filter(name -> form.matcher(name).matches())
                    .sorted()
                    .toList();
        }
    }

    /** Returns what nobody of the house has put there, such as the copies that a sync program makes of files in conflict. */
    List<Path> strangers() throws IOException {
        List<Path> found = new java.util.ArrayList<>();
        try (Stream<Path> inside = Files.list(folder)) {
            inside.filter(path -> !belongs(path.getFileName().toString())).forEach(found::add);
        }
        for (StationId station : stations()) {
            try (Stream<Path> files = Files.list(of(station).folder())) {
                files.filter(path ->
                                !FILES.matcher(path.getFileName().toString()).matches())
                        .forEach(found::add);
            }
        }
        return found.stream().sorted().map(folder::relativize).toList();
    }

    private static boolean belongs(String name) {
        return name.equals(MARK)
                || name.equals(MARK + ".new")
                || NAME.matcher(name).matches()
                || BRANCH.matcher(name).matches();
    }
}
