package wickbench.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class KeyboardTest {

    @Test
    void each_answer_is_a_line_of_standard_input() {
        Keyboard keyboard = Keyboard.lines(stream("first µ\r\n\nlast"));
        assertThat(keyboard.secret("a"))
                .hasValueSatisfying(answer -> assertThat(answer).containsExactly("first µ".toCharArray()));
        assertThat(keyboard.secret("b"))
                .hasValueSatisfying(answer -> assertThat(answer).isEmpty());
        assertThat(keyboard.secret("c"))
                .hasValueSatisfying(answer -> assertThat(answer).containsExactly('l', 'a', 's', 't'));
        assertThat(keyboard.secret("d")).isEmpty();
    }

    @Test
    void a_call_made_again_gets_the_same_answers_in_copies_of_its_own() {
        Keyboard keyboard = Keyboard.lines(stream("one\ntwo\n"));
        keyboard.secret("a").orElseThrow()[0] = 'x';
        keyboard.again();
        assertThat(keyboard.secret("a").map(String::new)).hasValue("one");
        assertThat(keyboard.secret("b").map(String::new)).hasValue("two");
    }

    private static ByteArrayInputStream stream(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }
}
