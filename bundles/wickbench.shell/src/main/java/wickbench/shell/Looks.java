package wickbench.shell;

import java.util.List;
import org.eclipse.swt.widgets.Display;
import wickbench.api.json.Json;
import wickbench.widgets.Metrics;
import wickbench.widgets.Palette;
import wickbench.widgets.Theme;

/**
 * Light or dark, and how large.
 *
 * @param percent one of {@link #SIZES}
 */
record Looks(boolean dark, int percent) {
    static final List<Integer> SIZES = List.of(100, 125, 150, 175, 200);
    static final Looks FIRST = new Looks(false, 100);

    Theme on(Display display) {
        return new Theme(display, dark ? Palette.ofDark() : Palette.ofLight(), new Metrics(percent));
    }

    Looks withDark(boolean wanted) {
        return new Looks(wanted, percent);
    }

    Looks withPercent(int wanted) {
        return new Looks(dark, wanted);
    }

    /** Returns the next size up or down, or this where there is none. */
    Looks larger(int steps) {
        int at = Math.max(0, Math.min(SIZES.size() - 1, SIZES.indexOf(percent) + steps));
        return withPercent(SIZES.get(at));
    }

    Json.Obj toJson() {
        return Json.object().with("dark", dark).with("percent", percent);
    }

    /** Takes what was kept as far as it makes sense. */
    static Looks of(Json.Obj kept) {
        boolean dark = kept.get("dark").filter(new Json.Bool(true)::equals).isPresent();
        int percent = kept.get("percent")
                .filter(Json.Num.class::isInstance)
                .map(number -> ((Json.Num) number).value().intValue())
                .filter(SIZES::contains)
                .orElse(FIRST.percent);
        return new Looks(dark, percent);
    }
}
