package wickbench.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Proofs over the eight published entries of the RFC 6962 reference implementation, against its published proofs.
 *
 * <p>Each hash is given by its first eight digits where it is the hash of a leaf or root in {@code merkle-rfc6962.csv}, which
 * {@link FrontierTest} holds to the last digit.
 */
class PublishedProofsTest {
    private static final String ZERO_ONE = "5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e";
    private static final String FOUR_TO_SEVEN = "6b47aaf29ee3c2af9af889bc1fb9254dabd31177f16232dd6aab035ca39bf6e4";

    @ParameterizedTest
    @CsvSource({
        "0, 8, 96a296d2 5f083f0a 6b47aaf2",
        "5, 8, bc1a0643 ca854ea1 d37ee418",
        "2, 3, fac54203",
        "1, 5, 6e340b9c 5f083f0a bc1a0643"
    })
    void an_inclusion_proof_is_the_published_one(int index, int size, String path) throws IOException {
        Grown published = published();
        Inclusion proof = published.tree().inclusion(index, size);
        assertThat(first(proof.path())).isEqualTo(path);
        assertThat(proof.proves(published.leaf(index), published.root(size))).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "1, 8, 96a296d2 5f083f0a 6b47aaf2",
        "2, 8, 5f083f0a 6b47aaf2",
        "6, 8, 0ebc5d34 ca854ea1 d37ee418",
        "2, 5, 5f083f0a bc1a0643",
        "4, 8, 6b47aaf2",
        "7, 7, ''"
    })
    void a_consistency_proof_is_the_published_one(int older, int newer, String path) throws IOException {
        Grown published = published();
        Consistency proof = published.tree().consistency(older, newer);
        assertThat(first(proof.path())).isEqualTo(path);
        assertThat(proof.proves(published.root(older), published.root(newer))).isTrue();
    }

    @Test
    void inner_hashes_are_the_published_ones_to_the_last_digit() throws IOException {
        List<Digest> path = published().tree().inclusion(0, 8).path();
        assertThat(path.get(1).hex()).isEqualTo(ZERO_ONE);
        assertThat(path.get(2).hex()).isEqualTo(FOUR_TO_SEVEN);
        assertThat(published().tree().consistency(6, 8).path().get(0).hex())
                .isEqualTo("0ebc5d3437fbe2db158b9f126a1d118e308181031d0a949f8dededebc558ef6a");
    }

    private static String first(List<Digest> path) {
        return String.join(
                " ", path.stream().map(digest -> digest.hex().substring(0, 8)).toList());
    }

    private static Grown published() throws IOException {
        Grown tree = new Grown();
        try (InputStream file = PublishedProofsTest.class.getResourceAsStream("merkle-rfc6962.csv")) {
            new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.matches("[1-9].*"))
                    .map(line -> line.split(",")[1].replace("(empty)", ""))
                    .forEach(entry -> tree.add(HexFormat.of().parseHex(entry)));
        }
        return tree;
    }
}
