package wickbench.widgets;

import java.util.Arrays;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import wickbench.api.method.Seen;

/** Which key gives which answer; the letters are words of the user's language. */
final class StripKeys {
    private StripKeys() {}

    static Optional<Seen> answer(Event event) {
        if ((event.stateMask & (SWT.CTRL | SWT.ALT | SWT.COMMAND)) != 0) {
            return Optional.empty();
        }
        String typed = String.valueOf(Character.toUpperCase(event.character));
        return Arrays.stream(Seen.values())
                .filter(seen -> letter(seen).equals(typed))
                .findFirst();
    }

    static String letter(Seen seen) {
        return WidgetWords.get("strip.key." + seen.code());
    }

    /** Returns the answer that a click gives after this one; after the last comes none. */
    static Optional<Seen> next(Optional<Seen> answer) {
        int next = answer.map(seen -> seen.ordinal() + 1).orElse(0);
        return next < Seen.values().length ? Optional.of(Seen.values()[next]) : Optional.empty();
    }
}
