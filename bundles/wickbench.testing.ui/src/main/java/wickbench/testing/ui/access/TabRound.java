package wickbench.testing.ui.access;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Once round a window by Tab, each stop looked at with the focus and without. */
final class TabRound {
    private static final int FEWEST_PIXELS = 12;

    private static final int LOOKS = 20;
    private static final int LOOK_MILLIS = 100;

    private final Posted posted;
    private final Set<Control> looked;
    private final Set<Control> stops = new LinkedHashSet<>();
    private final List<String> wrong = new ArrayList<>();

    /** @param looked what was looked at on another round, to which this one adds */
    TabRound(Posted posted, Set<Control> looked) {
        this.posted = posted;
        this.looked = looked;
    }

    /** Goes round, and returns what is wrong. */
    List<String> go(List<Control> controls) {
        Optional<Control> at = focus();
        if (at.isEmpty()) {
            wrong.add("focus is nowhere");
        }
        for (int i = 0; i < 2 * controls.size() + 4 && at.map(stops::add).orElse(true); i++) {
            Optional<Control> stop = at;
            Optional<Pixels> with = posted.on(() -> stop.filter(looked::add).flatMap(Pixels::of));
            posted.key(SWT.TAB, SWT.TAB, ctrl(stop));
            at = focus();
            if (at.equals(stop)) {
                stop.ifPresent(control -> wrong.add("focus does not leave: " + named(control)));
                break;
            }
            with.ifPresent(pixels -> stop.ifPresent(control -> mark(control, pixels)));
        }
        posted.run(() -> controls.stream()
                .filter(control -> !control.isDisposed() && control.isVisible() && control.isEnabled())
                // a row of which the arrow keys reach the others
                .filter(control -> !new Spoken(control).role().equals(Optional.of(ACC.ROLE_TABITEM)))
                // a list without choices takes no keys
                .filter(control -> !(control instanceof Combo combo && combo.getItemCount() == 0))
                .filter(control -> !stops.contains(control))
                .forEach(control -> wrong.add("Tab does not reach: " + Views.words(control))));
        order();
        return wrong;
    }

    /** A field of several lines keeps Tab for itself. */
    private int ctrl(Optional<Control> at) {
        boolean several = posted.on(() -> at.filter(control ->
                        control instanceof Text && !control.isDisposed() && (control.getStyle() & SWT.MULTI) != 0)
                .isPresent());
        return several ? SWT.CTRL : 0;
    }

    private Optional<Control> focus() {
        return posted.on(() -> Optional.ofNullable(Display.getCurrent().getFocusControl()));
    }

    private String named(Control control) {
        return posted.on(() -> Views.words(control));
    }

    private void mark(Control control, Pixels with) {
        posted.run(() -> {
            if (!control.isDisposed()) {
                control.getDisplay().update();
            }
        });
        Posted.rest(20);
        Optional<Pixels> without = posted.on(() -> Pixels.of(control));
        without.filter(pixels -> pixels.at().equals(with.at()))
                .filter(pixels -> pixels.other(with) < FEWEST_PIXELS)
                .filter(pixels -> !seenLater(control, pixels))
                .ifPresent(same -> wrong.add("focus not seen: " + named(control)));
    }

    /** Looks again with the focus: a busy machine paints late. */
    private boolean seenLater(Control control, Pixels without) {
        Optional<Control> next = focus();
        posted.run(control::forceFocus);
        boolean seen = false;
        for (int i = 0; i < LOOKS && !seen; i++) {
            Posted.rest(LOOK_MILLIS);
            seen = posted.on(() -> Pixels.of(control))
                    .filter(with -> with.other(without) >= FEWEST_PIXELS)
                    .isPresent();
        }
        posted.run(() -> next.ifPresent(Control::forceFocus));
        return seen;
    }

    /** Siblings come from the left to the right and from the top down. */
    private void order() {
        posted.run(() -> {
            Control before = null;
            for (Control stop : stops) {
                if (before != null && !before.isDisposed() && !stop.isDisposed() && backwards(before, stop)) {
                    wrong.add("against the reading order: " + Views.words(before) + " then " + Views.words(stop));
                }
                before = stop;
            }
        });
    }

    private static boolean backwards(Control one, Control next) {
        if (one instanceof Shell || next instanceof Shell || one.getParent() != next.getParent()) {
            return false;
        }
        Point a = one.getLocation();
        Point b = next.getLocation();
        boolean sameRow = b.y < a.y + one.getSize().y && a.y < b.y + next.getSize().y;
        return sameRow ? b.x < a.x : b.y < a.y;
    }
}
