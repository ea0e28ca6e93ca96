package wickbench.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Against the published hashes of RFC 6962 §2.1, which are those of RFC 9162 §2.1.1. */
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
                assertThat(Digest.of(leaf).hex()).isEqualTo(row.leaf());
                frontier.add(leaf);
            }
            assertThat(frontier.size()).isEqualTo(row.size());
            assertThat(frontier.root().hex()).isEqualTo(row.root());
        }
    }

    @Test
    void a_frontier_has_as_many_subtrees_as_its_size_has_bits() {
        List<Digest> peaks = grown(0, 7, new Frontier()).peaks();
        assertThat(peaks).hasSize(3);
        assertThat(Frontier.of(8, peaks)).isEmpty();
        assertThat(Frontier.of(-1, peaks)).isEmpty();
        assertThat(Frontier.of(0, List.of())).map(Frontier::root).contains(Digest.of(hash.empty()));
    }

    private Frontier grown(int from, int to, Frontier frontier) {
        IntStream.range(from, to).forEach(i -> frontier.add(leaf(i)));
        return frontier;
    }

    private byte[] leaf(int i) {
        return hash.leaf(Integer.toString(i).getBytes(StandardCharsets.US_ASCII));
    }
}
