package wickbench.testing.ui.access;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import wickbench.testing.Walked;
import wickbench.widgets.TabBar;

/**
 * Opens every place of the rail in a window, each of its tabs and each form behind a button, and asks what stands there for its name,
 * its role and its letter.
 */
public class WordsWalk implements Supplier<Walked> {
    /** The key to the bar across the window that says so. */
    private static final String BROKEN = "Ctrl+F6";

    private static final String MORE = "\u2026";
    private static final int QUIET_MILLIS = 150;
    private static final int LOOK_MILLIS = 50;
    private static final int PATIENCE = 120;

    final Posted posted;
    private final List<String> views = new ArrayList<>();
    private final Map<String, String> misses = new LinkedHashMap<>();
    private final Set<String> pressed = new HashSet<>();
    private int controls;

    /** @param window whose display it is */
    public WordsWalk(Thread window) {
        posted = new Posted(window);
    }

    @Override
    public Walked get() {
        settle();
        for (int place = 0; place < posted.on(() -> rail().size()); place++) {
            String page = go(place);
            look(page);
            forms(page);
            for (int tab = 1; choose(tab); tab++) {
                String name = page + " / " + posted.on(() -> new Spoken(bar().orElseThrow()).name());
                look(name);
                forms(name);
                go(place);
            }
        }
        return new Walked(
                views,
                controls,
                misses.entrySet().stream()
                        .map(miss -> miss.getKey() + " | " + miss.getValue())
                        .toList());
    }

    private String go(int place) {
        int at = place;
        String name = posted.on(() -> {
            Control item = rail().get(at);
            item.notifyListeners(SWT.MouseDown, new Event());
            return new Spoken(item).name();
        });
        settle();
        return name;
    }

    /** Chooses a tab, counted from 0, by its digit; returns whether there is one. */
    private boolean choose(int tab) {
        boolean there = posted.on(() -> {
            Event digit = new Event();
            digit.character = (char) ('1' + tab);
            bar().ifPresent(bar -> {
                bar.setFocus();
                bar.notifyListeners(SWT.KeyDown, digit);
            });
            return bar().filter(bar -> bar.shown() == tab).isPresent();
        });
        settle();
        return there;
    }

    private Optional<TabBar> bar() {
        return Reach.seen(posted.front()).stream()
                .filter(TabBar.class::isInstance)
                .map(TabBar.class::cast)
                .findFirst();
    }

    private List<Control> rail() {
        Stream<Control> all = Reach.seen(posted.front()).stream().filter(Canvas.class::isInstance);
        return all.filter(control -> new Spoken(control).role().equals(Optional.of(ACC.ROLE_TABITEM)))
                .toList();
    }

    /** Opens what each button with three dots opens, unless it was opened on another page. */
    private void forms(String view) {
        for (String words : posted.on(this::openers)) {
            if (pressed.add(view.replaceAll(" /.*", "") + words)) {
                Shell before = posted.on(posted::front);
                boolean done = posted.on(() -> press(words));
                if (done) {
                    settle();
                    look(view + " > " + words);
                    Shell after = posted.on(posted::front);
                    if (after != before) {
                        posted.run(after::close);
                        settle();
                    }
                }
            }
        }
    }

    private List<String> openers() {
        return Reach.seen(posted.front()).stream()
                .filter(control -> control instanceof Button button
                        && button.isEnabled()
                        && button.getText().contains(MORE))
                .map(control -> ((Button) control).getText())
                .toList();
    }

    private boolean press(String words) {
        Optional<Button> button = Reach.seen(posted.front()).stream()
                .filter(control -> control instanceof Button each
                        && each.isEnabled()
                        && each.getText().equals(words))
                .map(Button.class::cast)
                .findFirst();
        button.ifPresent(there -> there.getDisplay().asyncExec(() -> {
            if (!there.isDisposed()) {
                there.notifyListeners(SWT.Selection, new Event());
            }
        }));
        return button.isPresent();
    }

    private void look(String view) {
        views.add(view);
        List<Control> all = posted.on(() -> Reach.controls(posted.front()));
        controls += all.size();
        posted.run(() -> {
            Shell front = posted.front();
            Reach.seen(front).forEach(control -> named(view, control));
            broken().forEach(said -> miss("broke: " + said, view));
            Letters.wrong(all).forEach(miss -> miss("letters: " + miss, view));
        });
        further(all).forEach(miss -> miss(miss, view));
    }

    /** Asks for more than words; returns what is wrong. */
    List<String> further(List<Control> all) {
        return List.of();
    }

    private void named(String view, Control control) {
        if (Reach.takesKeys(control) && new Spoken(control).name().isEmpty()) {
            miss("names: no name: " + Views.words(control), view);
        }
        if (Reach.painted(control)
                && Reach.keys(control)
                && new Spoken(control).role().isEmpty()) {
            miss("names: no role: " + Views.words(control), view);
        }
        if (Reach.painted(control)
                && !Reach.keys(control)
                && new Spoken(control).name().isEmpty()) {
            miss("names: painted without a name: " + Views.words(control), view);
        }
        if (Reach.pointerOnly(control)) {
            miss("keys: pointer only: " + Views.words(control), view);
        }
    }

    /** Returns what the window says broke. */
    private List<String> broken() {
        return Reach.seen(posted.front()).stream()
                .filter(control -> new Spoken(control).keys().equals(BROKEN))
                .map(control -> Reach.seen(control.getParent()).stream()
                        .filter(Label.class::isInstance)
                        .map(label -> ((Label) label).getText())
                        .findFirst()
                        .orElse(""))
                .distinct()
                .toList();
    }

    private void miss(String what, String view) {
        misses.putIfAbsent(what, view);
    }

    /** Waits until nothing has moved for a while. */
    private void settle() {
        String before = "";
        int quiet = 0;
        for (int i = 0; i < PATIENCE && quiet < QUIET_MILLIS; i++) {
            Posted.rest(LOOK_MILLIS);
            String now = posted.on(() -> Reach.seen(posted.front()).stream()
                    .map(control -> control.hashCode() + ":" + control.isEnabled() + control.getBounds())
                    .collect(Collectors.joining()));
            quiet = now.equals(before) ? quiet + LOOK_MILLIS : 0;
            before = now;
        }
    }
}
