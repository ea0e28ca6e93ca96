package wickbench.journal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicLong;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Entry;

/** A program that records in one station of several, and ends when it has seen what all of them have recorded. */
final class SharingRecorder {
    private static final long PAUSE_MS = 15;
    private static final long PATIENCE_MS = 120_000;

    private SharingRecorder() {}

    /** @param args the home, the shared folder, the station's name, how many notes each records, how many stations there are */
    public static void main(String[] args) throws IOException, InterruptedException {
        PrintStream said = new PrintStream(new FileOutputStream(FileDescriptor.out), true);
        HomeFolder home = new HomeFolder(Path.of(args[0]));
        int notes = Integer.parseInt(args[3]);
        int others = Integer.parseInt(args[4]) - 1;
        Map<String, AtomicLong> heard = new ConcurrentHashMap<>();
        List<Long> late = new CopyOnWriteArrayList<>();
        try (JournalFolder journal = JournalFolder.open(home, entries -> hear(entries, args[2], home, heard, late))) {
            journal.found(Site.founding(args[2]));
            journal.others().share(Optional.of(Path.of(args[1])));
            for (int n = 0; n < notes; n++) {
                journal.append(List.of(Recorded.note(n)));
                Thread.sleep(PAUSE_MS);
            }
            boolean all = await(heard, others, notes);
            List<Long> sorted = late.stream().sorted().toList();
            said.println((all ? "all " : "missing ") + heard + " ms: median " + sorted.get(sorted.size() / 2)
                    + ", 99 of 100 " + sorted.get(sorted.size() * 99 / 100) + ", slowest "
                    + sorted.get(sorted.size() - 1));
            // others may still want what this one has
            System.in.read();
        }
    }

    private static void hear(
            List<Entry> entries, String own, HomeFolder home, Map<String, AtomicLong> heard, List<Long> late) {
        for (Entry entry : entries) {
            String station = entry.ref().station().value();
            if (!station.equals(own) && entry.kind().equals("note.written")) {
                heard.computeIfAbsent(station, name -> new AtomicLong()).incrementAndGet();
                late.add(home.clock().instant().toEpochMilli() - entry.at().toEpochMilli());
            }
        }
    }

    private static boolean await(Map<String, AtomicLong> heard, int others, int notes) throws InterruptedException {
        for (long waited = 0; waited < PATIENCE_MS; waited += PAUSE_MS) {
            if (heard.size() == others && heard.values().stream().allMatch(count -> count.get() == notes)) {
                return true;
            }
            Thread.sleep(PAUSE_MS);
        }
        return false;
    }

    /** Starts it in a virtual machine of its own. */
    static Process start(Path home, Path share, String station, int notes, int stations) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        SharingRecorder.class.getName(),
                        home.toString(),
                        share.toString(),
                        station,
                        Integer.toString(notes),
                        Integer.toString(stations))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }
}
