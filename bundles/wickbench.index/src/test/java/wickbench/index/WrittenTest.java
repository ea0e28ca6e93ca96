package wickbench.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.progress.Progress;

/** The file is written between transactions, by whoever changes it, and not by H2 in its own time: that may catch one at half. */
class WrittenTest {
    /** Longer than whoever changes the file lets it wait, and longer than H2 would. */
    private static final int LONG_MS = 1_500;

    @TempDir
    Path folder;

    @Test
    void whatChangedIsWrittenWithTheNextChangeAndNotBefore() throws IOException, InterruptedException {
        try (TestHome home = TestHome.in(folder)) {
            home.views(Tallies.named("tallies"));
            home.journal().append(Said.many("seen", 5));
            home.index().catchUp(Progress.NONE);
            home.journal().append(Said.many("seen", 5));
            home.index().catchUp(Progress.NONE);
            byte[] then = Files.readAllBytes(home.file());
            Thread.sleep(LONG_MS);
            assertThat(home.file()).hasBinaryContent(then);
            home.journal().append(Said.many("seen", 5));
            home.index().catchUp(Progress.NONE);
            byte[] now = Files.readAllBytes(home.file());
            assertThat(now).isNotEqualTo(then);
            Thread.sleep(LONG_MS);
            assertThat(home.file()).hasBinaryContent(now);
        }
    }
}
