package wickbench.journal.services;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.ServiceReference;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.JournalListener;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.journal.JournalFolder;

/** The one journal of a program: opened once, heard of by whoever is there, and let go of for good. */
class OpenJournalTest {
    @TempDir
    Path folder;

    private final PlayedFramework framework = new PlayedFramework();

    private static void record(JournalFolder journal, int number) {
        journal.append(List.of(new Draft(
                new UUID(1, number),
                new PersonId("rivera"),
                "note.written",
                1,
                Json.object().with("n", number))));
    }

    @Test
    void the_home_is_opened_once_and_never_again_after_the_end() {
        OpenJournal open = new OpenJournal(framework.context(), new HomeFolder(folder));
        JournalFolder journal = open.journal();
        assertThat(open.journal()).isSameAs(journal);
        assertThat(framework.asked()).containsExactly("registerService");
        open.close();
        assertThat(framework.asked()).containsExactly("registerService", "unregister");
        assertThatThrownBy(open::journal).isInstanceOf(IllegalStateException.class);
        try (JournalFolder next = JournalFolder.open(new HomeFolder(folder), entries -> {})) {
            assertThat(next.founding()).isEmpty();
        }
    }

    @Test
    void whoever_listens_hears_of_entries_and_whoever_left_does_not() {
        OpenJournal open = new OpenJournal(framework.context(), new HomeFolder(folder));
        List<Entry> heard = new ArrayList<>();
        ServiceReference<JournalListener> there = PlayedFramework.reference();
        ServiceReference<JournalListener> gone = PlayedFramework.reference();
        framework.put(there, (JournalListener) heard::addAll);
        open.listen(there);
        open.listen(gone);
        record(open.journal(), 1);
        assertThat(heard).extracting(Entry::kind).containsExactly("station.founded", "note.written");
        assertThat(framework.asked()).filteredOn("ungetService"::equals).hasSize(1);
        assertThat(open.journal().status().notices()).isEmpty();
        open.unlisten(there);
        record(open.journal(), 2);
        assertThat(heard).hasSize(2);
        open.close();
    }
}
