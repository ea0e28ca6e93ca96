package wickbench.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Against the recursive definition of RFC 9162 §2.1.1. */
class FrontierPropertyTest {
    private final TreeHash hash = new TreeHash();

    @Property(tries = 200)
    void a_frontier_gives_the_root_of_the_recursive_definition(@ForAll @IntRange(max = 300) int size) {
        Frontier frontier = grown(0, size, new Frontier());
        assertThat(frontier.root()).isEqualTo(Digest.of(recursive(0, size)));
    }

    @Property(tries = 200)
    void a_frontier_taken_up_again_grows_as_if_never_laid_down(
            @ForAll @IntRange(max = 300) int before, @ForAll @IntRange(max = 300) int after) {
        Frontier first = grown(0, before, new Frontier());
        Frontier again = Frontier.of(before, first.peaks()).orElseThrow();
        assertThat(grown(before, before + after, again).root())
                .isEqualTo(grown(0, before + after, new Frontier()).root());
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
