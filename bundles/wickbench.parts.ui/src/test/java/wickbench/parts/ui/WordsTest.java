package wickbench.parts.ui;

import org.junit.jupiter.api.Test;
import wickbench.testing.WordsCheck;

class WordsTest {
    private final WordsCheck words = new WordsCheck("parts-ui");

    @Test
    void every_word_asked_for_is_there_and_no_other() {
        words.noneIsMissing();
        words.noneIsLeftOver();
        words.apostrophesAreDoubled();
    }
}
