package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import wickbench.api.journal.Hash;

/** Against RFC 9162 §2.1.1 (the hashes of RFC 6962 §2.1) and its recursive definition. */
class FrontierTest {
    private final TreeHash hash = new TreeHash();

    private record Row(int size, byte[] entry, String leaf, String root) {
        static Row of(String line) {
            String[] cells = line.split(",", -1);
            String entry = cells[1].equals("(empty)") ? "" : cells[1];
            return new Row(Integer.parseInt(cells[0]), HexFormat.of().parseHex(entry), cells[2], cells[3]);
        }
    }

    private static List<Row> published() throws IOException {
        try (InputStream file = FrontierTest.class.getResourceAsStream("merkle-rfc6962.csv")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && Character.isDigit(line.charAt(0)))
                    .map(Row::of)
                    .toList();
        }
    }

    @Test
    void leaves_and_roots_are_the_published_ones() throws IOException {
        Frontier frontier = new Frontier();
        assertThat(published()).hasSize(9);
        for (Row row : published()) {
            if (row.size() > 0) {
                byte[] leaf = hash.leaf(row.entry());
                assertThat(Hash.of(leaf).hex()).isEqualTo(row.leaf());
                frontier.add(leaf);
            }
            assertThat(frontier.size()).isEqualTo(row.size());
            assertThat(frontier.root().hex()).isEqualTo(row.root());
        }
    }

    @Property(tries = 200)
    void a_frontier_gives_the_root_of_the_recursive_definition(@ForAll @IntRange(max = 300) int size) {
        Frontier frontier = grown(0, size, new Frontier());
        assertThat(frontier.root()).isEqualTo(Hash.of(recursive(0, size)));
    }

    @Property(tries = 200)
    void a_frontier_taken_up_again_grows_as_if_never_laid_down(
            @ForAll @IntRange(max = 300) int before, @ForAll @IntRange(max = 300) int after) {
        Frontier first = grown(0, before, new Frontier());
        Frontier again = Frontier.of(before, first.peaks()).orElseThrow();
        assertThat(grown(before, before + after, again).root())
                .isEqualTo(grown(0, before + after, new Frontier()).root());
    }

    @Test
    void a_frontier_has_as_many_subtrees_as_its_size_has_bits() {
        List<Hash> peaks = grown(0, 7, new Frontier()).peaks();
        assertThat(peaks).hasSize(3);
        assertThat(Frontier.of(8, peaks)).isEmpty();
        assertThat(Frontier.of(-1, peaks)).isEmpty();
        assertThat(Frontier.of(0, List.of())).map(Frontier::root).contains(Hash.of(hash.empty()));
    }

    private Frontier grown(int from, int to, Frontier frontier) {
        IntStream.range(from, to).forEach(i -> frontier.add(leaf(i)));
        return frontier;
    }

    private byte[] leaf(int i) {
        return hash.leaf(Integer.toString(i).getBytes(StandardCharsets.US_ASCII));
    }

    /** RFC 9162 §2.1.1: split at the largest power of two below the size. */
    private byte[] recursive(int from, int to) {
        if (to == from) {
            return hash.empty();
        }
        if (to - from == 1) {
            return leaf(from);
        }
        int split = Integer.highestOneBit(to - from - 1);
        return hash.node(recursive(from, from + split), recursive(from + split, to));
    }
}
