package wickbench.api.authority;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;
import wickbench.api.words.Coded;

class ActWordsTest {
    @Test
    void every_act_has_words_and_no_words_are_left_over() {
        assertThat(ResourceBundle.getBundle("OSGI-INF.l10n.acts").keySet())
                .containsExactlyInAnyOrderElementsOf(
                        Arrays.stream(Act.values()).map(Coded::code).toList());
        assertThat(ActWords.text(Act.ISSUE_METHOD)).isEqualTo("issue a method");
    }
}
