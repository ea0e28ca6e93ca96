package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.journal.JournalFolder;

/** The check of a real journal behind a real window. */
class JournalCheckTest {
    @TempDir
    private Path folder;

    private JournalFolder journal;

    @BeforeEach
    void open() {
        journal = JournalFolder.open(new HomeFolder(folder), entries -> {});
    }

    @AfterEach
    void close() {
        journal.close();
    }

    @Test
    void findsAFlippedByteAndTellsUntilSomebodyDismissesIt() throws IOException {
        record(3);
        flip();
        try (OpenDesk desk = desk()) {
            check(desk);
            desk.await(() -> words(desk).stream().anyMatch(word -> word.startsWith("The journal does not hold.")));
            assertThat(words(desk)).anyMatch(word -> word.contains("station-1:2-3: Entry 2 is not what entry 3"));
            desk.window().look(desk.window().looks().withDark(true));
            assertThat(words(desk)).anyMatch(word -> word.startsWith("The journal does not hold."));
        }
    }

    @Test
    void saysNothingWhileAllHolds() {
        record(3);
        try (OpenDesk desk = desk()) {
            List<String> before = words(desk);
            check(desk);
            desk.await(() -> desk.window().board().size() == 0);
            assertThat(words(desk)).containsExactlyElementsOf(before);
        }
    }

    @Test
    void leavesASimulatedHomeAlone() throws IOException {
        journal.close();
        HomeFolder home = new HomeFolder(folder);
        home.simulate(7, Instant.parse("2026-03-02T06:00:00Z"));
        journal = JournalFolder.open(home, entries -> {});
        record(3);
        assertThat(journal.founding())
                .hasValueSatisfying(founded -> assertThat(founded.simulated()).isTrue());
        flip();
        try (OpenDesk desk = desk()) {
            check(desk);
            desk.await(() -> desk.window().board().size() == 0);
            assertThat(words(desk)).noneMatch(word -> word.startsWith("The journal does not hold."));
        }
    }

    @Test
    void letsTheWorkThatSomebodyWaitsForBeShownBeforeIt() throws InterruptedException {
        JobBoard board = new JobBoard();
        CountDownLatch go = new CountDownLatch(1);
        try (OpenDesk desk = desk()) {
            PageJobs jobs = new PageJobs(
                    desk.window().shell().getDisplay(),
                    desk.supplies().workers().pool(),
                    () -> true,
                    board,
                    e -> {});
            jobs.runUnasked("unasked", progress -> waited(go), nothing -> {});
            assertThat(board.awaited()).isFalse();
            assertThat(board.longest().orElseThrow().what()).isEqualTo("unasked");
            jobs.run("asked", progress -> waited(go), nothing -> {});
            assertThat(board.awaited()).isTrue();
            assertThat(board.longest().orElseThrow().what()).isEqualTo("asked");
            assertThat(board.size()).isEqualTo(2);
            go.countDown();
            desk.await(() -> board.size() == 0);
        }
    }

    private static boolean waited(CountDownLatch go) throws InterruptedException {
        go.await();
        return true;
    }

    private OpenDesk desk() {
        Neighbours neighbours = new Neighbours();
        neighbours.journal(journal);
        OpenDesk desk = new OpenDesk(new Places(), neighbours);
        desk.await(() -> desk.window().board().size() == 0);
        return desk;
    }

    private void check(OpenDesk desk) {
        JournalCheck.now(desk.window(), desk.supplies(), journal);
        assertThat(desk.window().board().size()).isPositive();
    }

    private void record(int count) {
        for (int i = 0; i < count; i++) {
            Json.Obj body = Json.object().with("n", i);
            journal.append(List.of(new Draft(new UUID(3, i), new PersonId("rivera"), "note.written", 1, body)));
        }
        journal.checkpoint();
    }

    /** Changes one digit of the third line. */
    private void flip() throws IOException {
        Path segment = folder.resolve("journal/station-1/entries-000000.jsonl");
        String before = Files.readString(segment);
        String after = before.replace("\"n\":1", "\"n\":7");
        assertThat(after).isNotEqualTo(before);
        Files.writeString(segment, after);
    }

    private static List<String> words(OpenDesk desk) {
        List<String> found = new ArrayList<>();
        gather(desk.window().shell(), found);
        return found;
    }

    private static void gather(Composite box, List<String> found) {
        for (Control child : box.getChildren()) {
            if (child instanceof Label label) {
                found.add(label.getText());
            } else if (child instanceof Composite inner) {
                gather(inner, found);
            }
        }
    }
}
