package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.proof.TreeHash;

/** Hashes that were reckoned once are kept, gone on from, and thrown away where they do not fit one another. */
class TreeFilesTest {
    /** Enough for levels that are held in memory, with more than one hash in them. */
    private static final int LEAVES = 300;

    @TempDir
    Path folder;

    private final TreeHash hash = new TreeHash();

    private byte[] leaf(int number) {
        return hash.leaf(Integer.toString(number).getBytes(StandardCharsets.UTF_8));
    }

    private void add(TreeFiles files, int from, int to) throws IOException {
        for (int leaf = from; leaf < to; leaf++) {
            files.add(leaf(leaf));
        }
        files.flush();
    }

    /** Returns every full level, reckoned anew. */
    private List<List<byte[]>> levels(int leaves) {
        List<List<byte[]>> levels = new ArrayList<>();
        List<byte[]> level = new ArrayList<>();
        for (int leaf = 0; leaf < leaves; leaf++) {
            level.add(leaf(leaf));
        }
        while (!level.isEmpty()) {
            levels.add(level);
            List<byte[]> above = new ArrayList<>();
            for (int i = 0; i + 1 < level.size(); i += 2) {
                above.add(hash.node(level.get(i), level.get(i + 1)));
            }
            level = above;
        }
        return levels;
    }

    private void holds(TreeFiles files, int leaves) throws IOException {
        assertThat(files.size()).isEqualTo(leaves);
        List<List<byte[]>> levels = levels(leaves);
        for (int level = 0; level < levels.size(); level++) {
            for (int index = 0; index < levels.get(level).size(); index++) {
                assertThat(files.node(level, index))
                        .as(level + "/" + index)
                        .isEqualTo(levels.get(level).get(index));
            }
        }
    }

    private Path level(int level) {
        return folder.resolve("level-0" + level);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 63, 64, 65, 127, 128, 192, LEAVES})
    void what_was_kept_is_gone_on_from_with_nothing_reckoned_again(int kept) throws IOException {
        try (TreeFiles files = TreeFiles.open(folder)) {
            add(files, 0, kept);
            holds(files, kept);
        }
        try (TreeFiles files = TreeFiles.open(folder)) {
            holds(files, kept);
            add(files, kept, kept + LEAVES);
            holds(files, kept + LEAVES);
        }
    }

    @Test
    void files_that_do_not_fit_one_another_are_thrown_away() throws IOException {
        byte[] node = leaf(0);
        for (int level : List.of(0, 1, 6)) {
            for (int bytes : List.of(1, TreeFiles.BYTES)) {
                try (TreeFiles files = TreeFiles.open(folder)) {
                    files.reset();
                    add(files, 0, LEAVES);
                }
                Files.write(level(level), java.util.Arrays.copyOf(node, bytes), StandardOpenOption.APPEND);
                if (level == 0 && bytes == TreeFiles.BYTES) {
                    // one leaf more asks for one node more on the level above, so this is a whole one
                    Files.write(level(0), node, StandardOpenOption.APPEND);
                }
                try (TreeFiles files = TreeFiles.open(folder)) {
                    assertThat(files.size()).as(level + ": " + bytes).isZero();
                    assertThat(folder).isEmptyDirectory();
                    add(files, 0, 5);
                    holds(files, 5);
                }
            }
        }
    }

    @Test
    void a_level_that_is_missing_is_as_good_as_none() throws IOException {
        try (TreeFiles files = TreeFiles.open(folder)) {
            add(files, 0, LEAVES);
        }
        Files.delete(level(3));
        try (TreeFiles files = TreeFiles.open(folder)) {
            assertThat(files.size()).isZero();
        }
    }

    @Test
    void what_is_thrown_away_is_not_held_open() throws IOException {
        try (TreeFiles files = TreeFiles.open(folder)) {
            add(files, 0, LEAVES);
            files.reset();
            assertThat(Handles.below(folder)).isEmpty();
            add(files, 0, 3);
            holds(files, 3);
        }
        assertThat(Handles.below(folder)).isEmpty();
    }
}
