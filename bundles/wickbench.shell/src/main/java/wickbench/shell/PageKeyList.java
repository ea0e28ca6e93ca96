package wickbench.shell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** The keys of a page as it stands: the letters and function keys that its buttons name, and what the page adds. */
record PageKeyList(Composite page, List<KeyHint> more) {
    private static final Pattern LETTER = Pattern.compile("&(.)");
    private static final Pattern FUNCTION = Pattern.compile("\\s+(F\\d{1,2})$");

    List<KeyHint> all() {
        Map<String, KeyHint> keys = new LinkedHashMap<>();
        buttons(page)
                .map(PageKeyList::hint)
                .flatMap(Optional::stream)
                .forEach(hint -> keys.putIfAbsent(hint.does(), hint));
        List<KeyHint> all = new ArrayList<>(keys.values());
        all.addAll(more);
        return all;
    }

    private static Optional<KeyHint> hint(Button button) {
        String words = button.getText().replace("&&", "");
        Matcher letter = LETTER.matcher(words);
        Matcher function = FUNCTION.matcher(words);
        List<String> keys = new ArrayList<>();
        if (letter.find()) {
            keys.add(ShellWords.get("keys.alt", letter.group(1).toUpperCase(Locale.ROOT)));
        }
        if (function.find()) {
            keys.add(function.group(1));
            words = words.substring(0, function.start());
        }
        String does = words.replace("&", "").replace("\u25be", "").strip();
        return keys.isEmpty() ? Optional.empty() : Optional.of(new KeyHint(String.join("  ", keys), does));
    }

    private static Stream<Button> buttons(Composite in) {
        return Stream.of(in.getChildren()).filter(Control::isVisible).flatMap(PageKeyList::within);
    }

    private static Stream<Button> within(Control control) {
        return control instanceof Button button
                ? Stream.of(button)
                : control instanceof Composite inner ? buttons(inner) : Stream.of();
    }
}
