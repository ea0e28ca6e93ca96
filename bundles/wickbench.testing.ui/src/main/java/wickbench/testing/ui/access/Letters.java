package wickbench.testing.ui.access;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;

/** The letters that go with Alt in one view. */
final class Letters {
    private Letters() {}

    /** Returns what is wrong with them. */
    static List<String> wrong(List<Control> controls) {
        List<String> wrong = new ArrayList<>();
        Map<Character, String> held = new HashMap<>();
        for (Control control : controls) {
            if (control instanceof Button button && !button.getText().isBlank()) {
                Optional<Character> letter = marked(button.getText());
                if (letter.isEmpty()) {
                    if ((button.getStyle() & SWT.PUSH) != 0
                            && new Spoken(button).keys().isEmpty()) {
                        wrong.add("no letter: " + button.getText());
                    }
                } else if (held.containsKey(letter.get())) {
                    wrong.add("letter twice: " + held.get(letter.get()) + " / " + button.getText());
                } else {
                    held.put(letter.get(), button.getText());
                }
            }
        }
        return wrong;
    }

    /** Returns the letter behind a single {@code &}. */
    static Optional<Character> marked(String words) {
        for (int i = 0; i < words.length() - 1; i++) {
            if (words.charAt(i) == '&') {
                if (words.charAt(i + 1) != '&') {
                    return Optional.of(Character.toLowerCase(words.charAt(i + 1)));
                }
                i++;
            }
        }
        return Optional.empty();
    }
}
