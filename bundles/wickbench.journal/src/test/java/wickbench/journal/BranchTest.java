package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Another history of a station is believed to be one when its key has signed it, and all of it is there. */
class BranchTest {
    @TempDir
    Path folder;

    private StationFolder branch;
    private Founded founded;

    @BeforeEach
    void record() throws IOException {
        Recorded.closed(folder, 3);
        branch = Recorded.files(folder);
        founded = Beginning.of(branch).founded().orElseThrow();
    }

    @Test
    void what_the_station_signed_and_is_whole_is_one() throws IOException {
        assertThat(Branch.seal(branch, founded))
                .hasValueSatisfying(seal -> assertThat(seal.size()).isEqualTo(4));
        String entries = Files.readString(branch.segment(0));
        Files.writeString(branch.segment(0), entries.replaceFirst("rinse", "Rinse"));
        assertThat(Branch.seal(branch, founded)).isEmpty();
    }

    @Test
    void what_somebody_else_signed_is_none() throws IOException {
        Forged.history(branch);
        assertThat(Branch.seal(branch, founded)).isEmpty();
    }
}
