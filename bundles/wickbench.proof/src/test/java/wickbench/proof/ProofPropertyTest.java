package wickbench.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Each proof holds, and nothing else does: RFC 9162 §2.1.3 and §2.1.4. */
class ProofPropertyTest {
    private static final int MOST = 300;
    private static final Grown GROWN = Grown.of(MOST);
    private static final Tree<RuntimeException> TREE = GROWN.tree();

    @Test
    void every_entry_of_every_small_tree_is_proved_and_no_other_place_or_size() {
        for (int size = 1; size <= 40; size++) {
            for (int index = 0; index < size; index++) {
                Inclusion proof = TREE.inclusion(index, size);
                assertThat(proof.proves(GROWN.leaf(index), GROWN.root(size))).isTrue();
                assertThat(new Inclusion(index + 1, size, proof.path()).proves(GROWN.leaf(index), GROWN.root(size)))
                        .isFalse();
                assertThat(proof.proves(GROWN.leaf(index + 1), GROWN.root(size)))
                        .isFalse();
                assertThat(proof.proves(GROWN.leaf(index), GROWN.root(size + 1)))
                        .isFalse();
            }
        }
    }

    @Test
    void every_pair_of_small_sizes_is_proved_and_no_other_root() {
        for (int newer = 0; newer <= 40; newer++) {
            for (int older = 0; older <= newer; older++) {
                Consistency proof = TREE.consistency(older, newer);
                assertThat(proof.proves(GROWN.root(older), GROWN.root(newer)))
                        .as("%d in %d", older, newer)
                        .isTrue();
                assertThat(proof.proves(GROWN.root(older + 1), GROWN.root(newer)))
                        .isFalse();
                if (older > 0) {
                    assertThat(proof.proves(GROWN.root(older), GROWN.root(newer + 1)))
                            .isFalse();
                }
            }
        }
    }

    @Property(tries = 500)
    void an_inclusion_proof_with_a_bit_flipped_a_step_gone_or_a_step_more_fails(
            @ForAll @IntRange(min = 2, max = MOST) int size,
            @ForAll @IntRange(max = MOST - 1) int place,
            @ForAll @IntRange(max = 255) int bit) {
        int index = place % size;
        Inclusion proof = TREE.inclusion(index, size);
        assertThat(proof.proves(GROWN.leaf(index), GROWN.root(size))).isTrue();
        for (List<Digest> altered : altered(proof.path(), bit)) {
            assertThat(new Inclusion(index, size, altered).proves(GROWN.leaf(index), GROWN.root(size)))
                    .isFalse();
        }
        assertThat(proof.proves(flipped(GROWN.leaf(index), bit), GROWN.root(size)))
                .isFalse();
        assertThat(proof.proves(GROWN.leaf(index), flipped(GROWN.root(size), bit)))
                .isFalse();
    }

    @Property(tries = 500)
    void a_consistency_proof_with_a_bit_flipped_a_step_gone_or_a_step_more_fails(
            @ForAll @IntRange(min = 2, max = MOST) int newer,
            @ForAll @IntRange(max = MOST - 1) int part,
            @ForAll @IntRange(max = 255) int bit) {
        int older = 1 + part % (newer - 1);
        Consistency proof = TREE.consistency(older, newer);
        Digest old = GROWN.root(older);
        Digest now = GROWN.root(newer);
        assertThat(proof.proves(old, now)).isTrue();
        for (List<Digest> altered : altered(proof.path(), bit)) {
            assertThat(new Consistency(older, newer, altered).proves(old, now)).isFalse();
        }
        assertThat(proof.proves(flipped(old, bit), now)).isFalse();
        assertThat(proof.proves(old, flipped(now, bit))).isFalse();
    }

    @Test
    void what_is_no_proof_proves_nothing() {
        Digest root = GROWN.root(4);
        assertThat(new Inclusion(-1, 4, List.of()).proves(root, root)).isFalse();
        assertThat(new Inclusion(4, 4, List.of()).proves(root, root)).isFalse();
        assertThat(new Inclusion(0, 1, List.of(root)).proves(root, root)).isFalse();
        assertThat(new Consistency(-1, 4, List.of()).proves(root, root)).isFalse();
        assertThat(new Consistency(5, 4, List.of()).proves(root, root)).isFalse();
        assertThat(new Consistency(3, 4, List.of()).proves(root, root)).isFalse();
        assertThat(new Consistency(0, 4, List.of(root)).proves(GROWN.root(0), root))
                .isFalse();
        assertThat(new Consistency(4, 4, List.of(root)).proves(root, root)).isFalse();
    }

    /** Each step with a bit flipped or left out, and one step too many at either end. */
    private static List<List<Digest>> altered(List<Digest> path, int bit) {
        List<List<Digest>> all = new ArrayList<>();
        for (int i = 0; i < path.size(); i++) {
            List<Digest> other = new ArrayList<>(path);
            other.set(i, flipped(path.get(i), bit));
            all.add(other);
            List<Digest> shorter = new ArrayList<>(path);
            shorter.remove(i);
            all.add(shorter);
        }
        List<Digest> longer = new ArrayList<>(path);
        longer.add(GROWN.leaf(0));
        all.add(longer);
        List<Digest> before = new ArrayList<>(path);
        before.add(0, GROWN.leaf(0));
        all.add(before);
        return all;
    }

    private static Digest flipped(Digest digest, int bit) {
        byte[] bytes = digest.bytes();
        bytes[bit / Byte.SIZE] ^= (byte) (1 << bit % Byte.SIZE);
        return Digest.of(bytes);
    }
}
