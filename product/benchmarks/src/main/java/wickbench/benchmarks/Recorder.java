package wickbench.benchmarks;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import wickbench.api.journal.Entry;
import wickbench.api.progress.Progress;

/** A program that records until it is killed, and says of each entry when it was acknowledged. */
public final class Recorder {
    /** Said once everything is open. */
    static final String OPEN = "open";

    /** Has each entry taken into the index too, after it was acknowledged. */
    static final String INDEXED = "indexed";

    private static final int SEALED_EACH = 25;

    private Recorder() {}

    /** @param arguments the home's folder, and perhaps {@link #INDEXED} */
    public static void main(String[] arguments) {
        PrintStream said = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        boolean indexed = Arrays.asList(arguments).contains(INDEXED);
        try (Site site = new Site(Path.of(arguments[0]), new Notes())) {
            if (indexed) {
                site.index.catchUp(Progress.NONE);
            }
            said.println(OPEN);
            for (int number = 0; ; number++) {
                Entry entry = site.journal
                        .append(List.of(Notes.draft(site.home.chance(), number)))
                        .get(0);
                said.println(new Said(entry.ref().seq(), entry.id()));
                if (number % SEALED_EACH == 0) {
                    site.journal.checkpoint();
                }
                if (indexed) {
                    site.index.find(entry.id());
                }
            }
        }
    }

    /** An acknowledged entry, as it is said in a line. */
    record Said(long seq, UUID id) {
        private static final String LINE = "[0-9]+ [0-9a-f-]{36}";

        /** Reads all whole lines that say one; whoever is killed may leave half a line. */
        static List<Said> all(List<String> lines) {
            return lines.stream()
                    .filter(line -> line.matches(LINE))
                    .map(line -> line.split(" "))
                    .map(parts -> new Said(Long.parseLong(parts[0]), UUID.fromString(parts[1])))
                    .toList();
        }

        @Override
        public String toString() {
            return seq + " " + id;
        }
    }
}
