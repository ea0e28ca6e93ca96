package wickbench.plant.ui;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import wickbench.widgets.Theme;

/** Things to be ticked, in rows that break where the room ends. */
final class Ticks<T> {
    private final Map<T, Button> ticks = new LinkedHashMap<>();
    private final Composite row;

    Ticks(Composite parent, Theme theme, Collection<T> things, Function<T, String> words, Collection<T> chosen) {
        row = theme.controls().row(parent);
        things.forEach(thing -> {
            Button tick = theme.controls().check(row, words.apply(thing));
            tick.setSelection(chosen.contains(thing));
            ticks.put(thing, tick);
        });
    }

    Composite control() {
        return row;
    }

    List<T> chosen() {
        return ticks.entrySet().stream()
                .filter(tick -> tick.getValue().getSelection())
                .map(Map.Entry::getKey)
                .toList();
    }
}
