package wickbench.index;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.index.ViewState;
import wickbench.api.journal.Entry;
import wickbench.api.progress.Progress;

class H2IndexTest {
    private static final Tallies TALLIES = Tallies.named("tallies");

    @TempDir
    Path folder;

    /** Seq 0 is the founding of the station, so counts are one more than what was said. */
    private TestHome home;

    @BeforeEach
    void open() {
        home = TestHome.in(folder);
        home.views(TALLIES);
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void whoeverAppendedFindsIt() {
        home.journal().append(Said.many("seen", 3));
        assertThat(TALLIES.times(home.index(), "seen")).isEqualTo(3);
        home.journal().append(Said.many("seen", 2));
        assertThat(TALLIES.times(home.index(), "seen")).isEqualTo(5);
    }

    @Test
    void findsAnEntryByItsId() {
        List<Entry> entries = home.journal().append(Said.many("seen", 3));
        assertThat(home.index().find(entries.get(1).id()))
                .contains(entries.get(1).ref());
        assertThat(home.index().find(new UUID(0, 0))).isEmpty();
    }

    @Test
    void aViewThatComesLaterTakesTheWholeHistory() {
        home.journal().append(Said.many("seen", 2500));
        home.index().catchUp(Progress.NONE);
        Tallies late = Tallies.named("late");
        home.views(TALLIES, late);
        assertThat(late.times(home.index(), "seen")).isEqualTo(2500);
    }

    @Test
    void aViewThatLeavesAndComesBackGoesOn() {
        home.journal().append(Said.many("seen", 4));
        home.index().catchUp(Progress.NONE);
        home.views();
        home.journal().append(Said.many("seen", 3));
        home.index().catchUp(Progress.NONE);
        assertThatThrownBy(() -> TALLIES.times(home.index(), "seen")).isInstanceOf(IllegalStateException.class);
        home.views(TALLIES);
        assertThat(TALLIES.times(home.index(), "seen")).isEqualTo(7);
    }

    @Test
    void aNewVersionOfAViewIsMadeAnew() {
        home.journal().append(Said.many("seen", 4));
        home.index().catchUp(Progress.NONE);
        home.reopen();
        Tallies next = new Tallies("tallies", 2, Optional.empty());
        home.views(next);
        assertThat(next.times(home.index(), "seen")).isEqualTo(4);
        assertThat(home.index().views()).contains(new ViewState("tallies", 2, 5, 5, Optional.empty()));
    }

    @Test
    void aViewThatFailsFallsBehindAloneAndSaysWhy() {
        Tallies choking = new Tallies("choking", 1, Optional.of("damaged"));
        home.views(choking, TALLIES);
        home.journal().append(Said.many("seen", 2));
        home.index().catchUp(Progress.NONE);
        home.journal().append(Said.many("faint", 2));
        home.journal().append(Said.many("damaged", 1));

        assertThat(TALLIES.times(home.index(), "damaged")).isEqualTo(1);
        assertThat(home.index().views())
                .contains(new ViewState("choking", 1, 3, 6, Optional.of("station-1:5: cannot swallow damaged")));
        assertThatThrownBy(() -> choking.times(home.index(), "seen"))
                .isInstanceOfSatisfying(
                        Refusal.class, no -> assertThat(no.code()).isEqualTo("index.behind"))
                .hasMessageContaining("3 of 6 entries")
                .hasMessageContaining("cannot swallow damaged");

        Tallies mended = Tallies.named("choking");
        home.views(mended, TALLIES);
        assertThat(mended.times(home.index(), "seen")).isEqualTo(2);
        assertThat(mended.times(home.index(), "faint")).isEqualTo(2);
    }

    @Test
    void stopsWhenTheWatcherHasEnoughAndGoesOnLater() {
        home.journal().append(Said.many("seen", 2500));
        home.index().catchUp((done, total) -> false);
        assertThat(home.index().views()).contains(new ViewState("tallies", 1, 1000, 2501, Optional.empty()));
        assertThat(TALLIES.times(home.index(), "seen")).isEqualTo(2500);
    }

    @Test
    void refusesTheThreadThatMustNotWait() throws InterruptedException {
        home.index().refuseOn(Thread.currentThread());
        assertThatThrownBy(() -> home.index().find(new UUID(0, 0))).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> home.index().views()).isInstanceOf(IllegalStateException.class);
        assertThat(Threads.answerOf(() -> home.index().find(new UUID(0, 0)))).isEmpty();
    }

    @Test
    void aReadChangesNothing() {
        assertThatThrownBy(() -> home.index().read("tallies", rows -> rows.write("delete from tally")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("a read changes nothing: delete from tally");
    }

    @Test
    void aViewNobodyHasIsNamedWithThoseThereAre() {
        assertThatThrownBy(() -> home.index().read("tally", rows -> 0))
                .hasMessage("no view is named tally; there are [entry_ids, tallies]");
    }

    @Test
    void aFolderWithASemicolonIsRefusedInWords() throws IOException {
        try (H2Index index = H2Index.open(folder.resolve("a;b"), home.journal(), List::of)) {
            assertThatThrownBy(index::views)
                    .isInstanceOfSatisfying(
                            Refusal.class, no -> assertThat(no.code()).isEqualTo("index.folder"));
        }
    }
}
