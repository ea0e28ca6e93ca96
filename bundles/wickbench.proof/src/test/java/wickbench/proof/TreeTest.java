package wickbench.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class TreeTest {
    private static final Grown GROWN = Grown.of(130);

    @Test
    void a_tree_has_the_root_of_the_recursive_definition_at_every_size() {
        for (int size = 0; size <= 130; size++) {
            assertThat(GROWN.tree().root(size)).isEqualTo(GROWN.root(size));
        }
    }

    @Test
    void what_is_not_there_is_not_proved() {
        assertThatThrownBy(() -> GROWN.tree().inclusion(5, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> GROWN.tree().inclusion(-1, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> GROWN.tree().consistency(6, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> GROWN.tree().consistency(-1, 5)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_hash_is_64_lower_case_digits() {
        String root = GROWN.root(3).hex();
        assertThat(new Digest(root)).isEqualTo(GROWN.root(3)).hasToString(root);
        assertThatThrownBy(() -> new Digest(root.toUpperCase(java.util.Locale.ROOT)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Digest("00")).isInstanceOf(IllegalArgumentException.class);
    }
}
