package wickbench.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Makes a page of each Markdown file: {@code DOCS OUT}, folders laid out alike, so that pictures and links keep their places. */
public final class Guide {
    private static final String SOURCE = ".md";
    private static final String PAGE = ".html";

    /** Where a newcomer begins. */
    private static final String FIRST = "guide.md";

    private final Path docs;
    private final Path out;

    Guide(Path docs, Path out) {
        this.docs = docs;
        this.out = out;
    }

    /**
     * Makes all pages.
     *
     * @throws IOException when a source cannot be read or a page not written
     */
    public static void main(String[] arguments) throws IOException {
        new Guide(Path.of(arguments[0]), Path.of(arguments[1])).make();
    }

    void make() throws IOException {
        Contents contents = new Contents(titles());
        for (Path source : sources()) {
            Path within = docs.relativize(source);
            Path page = out.resolve(page(within.toString()));
            Files.createDirectories(page.getParent());
            Files.writeString(page, new Sheet(Files.readString(source), within, contents).html());
        }
    }

    /** Returns the chapters: the pages at the top, those of the decisions and formats are reached from them. */
    private List<Contents.Chapter> titles() throws IOException {
        try (Stream<Path> files = Files.list(docs)) {
            return files.filter(Guide::isSource)
                    .sorted(Comparator.comparing((Path file) -> !file.endsWith(FIRST))
                            .thenComparing(Comparator.naturalOrder()))
                    .map(Guide::chapter)
                    .toList();
        }
    }

    private static Contents.Chapter chapter(Path source) {
        try {
            String title = Files.readString(source)
                    .lines()
                    .filter(line -> line.startsWith("# "))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException(source + ": expected a heading"));
            return new Contents.Chapter(page(source.getFileName().toString()), title.substring(2));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<Path> sources() throws IOException {
        try (Stream<Path> files = Files.walk(docs)) {
            return files.filter(Guide::isSource).sorted().toList();
        }
    }

    private static boolean isSource(Path file) {
        return file.toString().endsWith(SOURCE);
    }

    /** Returns the page that a link to a source means; any other link as it is. */
    static String page(String link) {
        int mark = link.indexOf('#');
        String file = mark < 0 ? link : link.substring(0, mark);
        boolean here = file.endsWith(SOURCE) && !file.contains("://");
        return here
                ? file.substring(0, file.length() - SOURCE.length()) + PAGE + (mark < 0 ? "" : link.substring(mark))
                : link;
    }
}
