package wickbench.journal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;

/** A program with too little memory for what it is asked to record. */
final class LittleMemoryRecorder {
    private static final int TURNS = 12;

    private LittleMemoryRecorder() {}

    /** @param args the home's folder; says how many appends were refused and how many entries are kept */
    public static void main(String[] args) throws IOException {
        PrintStream said = new PrintStream(new FileOutputStream(FileDescriptor.out), true);
        int refused = 0;
        int kept = 1;
        try (JournalFolder journal = Recorded.open(Path.of(args[0]))) {
            warmUp(journal);
            for (int turn = 1; turn <= TURNS; turn++) {
                try {
                    journal.append(List.of(large(turn)));
                    kept++;
                } catch (Refusal e) {
                    said.println(e.getMessage());
                    refused++;
                }
                journal.append(Recorded.notes(turn, 1));
                kept++;
            }
            said.println("refused " + (refused > 0 && refused < TURNS));
            said.println("kept " + (journal.size(Recorded.STATION) == kept));
            said.println("findings " + journal.verify(Progress.NONE).findings());
        }
    }

    /** Loads all that the program runs through later: a class whose loading meets want of memory is broken for good. */
    private static void warmUp(JournalFolder journal) {
        if (!journal.verify(Progress.NONE).holds()) {
            throw new IllegalStateException("does not hold before it begins");
        }
        Say.failed(Say.words("failed.memory"));
    }

    /** Each is a megabyte larger; what it takes to write it is several times that. */
    private static Draft large(int megabytes) {
        Json.Obj body = Json.object().with("text", "x".repeat(megabytes << 20));
        return new Draft(new UUID(1_000 + megabytes, 7), new PersonId("rivera"), "note.written", 1, body);
    }
}
