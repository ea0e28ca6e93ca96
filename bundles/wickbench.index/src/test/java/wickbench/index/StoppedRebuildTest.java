package wickbench.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.api.index.ViewState;
import wickbench.api.progress.Progress;

/** Making the tables again is stopped half way: what stands then is a beginning, never something else. */
class StoppedRebuildTest {
    private static final Tallies TALLIES = Tallies.named("tallies");
    private static final String[] ALL = {"tallies", EntryIds.NAME};

    @TempDir
    Path folder;

    private TestHome home;
    private List<String> whole;

    @BeforeEach
    void fill() {
        home = TestHome.in(folder);
        home.views(TALLIES);
        home.journal().append(Said.many("seen", 2600));
        home.journal().append(Said.many("faint", 1900));
        home.index().rebuild(Progress.NONE);
        whole = Dump.of(home.index(), ALL);
    }

    @AfterEach
    void close() {
        home.close();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void whatIsReadAfterwardsEqualsWhatIsBuiltInOne(int batches) {
        home.index().rebuild(stopAfter(batches));
        assertThat(home.index().views()).extracting(ViewState::taken).containsOnly(batches * 1000L);
        assertThat(Dump.of(home.index(), ALL)).isEqualTo(whole);
        assertThat(home.index().verify(Progress.NONE).holds()).isTrue();
    }

    @Test
    void itGoesOnAfterTheProgramWasClosedAndOpened() {
        home.index().rebuild(stopAfter(2));
        home.reopen();
        assertThat(home.index().views()).extracting(ViewState::taken).containsOnly(2000L);
        home.index().catchUp(stopAfter(1));
        assertThat(home.index().views()).extracting(ViewState::taken).containsOnly(3000L);
        home.index().catchUp(Progress.NONE);
        assertThat(home.index().views()).allMatch(view -> view.taken() == view.of());
        assertThat(Dump.of(home.index(), ALL)).isEqualTo(whole);
        assertThat(home.index().notices()).isEmpty();
    }

    private static Progress stopAfter(int batches) {
        AtomicInteger heard = new AtomicInteger();
        return (done, total) -> heard.incrementAndGet() < batches;
    }
}
