package wickbench.bench.ui.editor;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import wickbench.widgets.Fit;
import wickbench.widgets.Scroller;
import wickbench.widgets.TabBar;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The editor of a method: step by step, checked as one leaves a field, kept at each change. */
public final class MethodEditor implements SectionView.Draft {
    private final Theme theme;
    private final EditorHost host;
    private final Composite box;
    private final TabBar tabs;
    private final Scroller scroller;
    private final Label needed;
    private final Button back;
    private final Button next;
    private MethodText text;
    private Section now = Section.KIT;
    private Optional<SectionView> view = Optional.empty();

    public MethodEditor(Composite parent, Theme theme, EditorHost host, MethodText text) {
        this.theme = theme;
        this.host = host;
        this.text = text;
        box = Fit.grow(theme.controls().box(parent, 1));
        List<String> names = Arrays.stream(Section.values()).map(Section::words).toList();
        tabs = Fit.wide(new TabBar(box, theme, names, tab -> open(Section.values()[tab])));
        scroller = new Scroller(box, theme);
        Fit.grow(scroller.control());
        needed = theme.controls().text(box, Type.SMALL, "");
        Composite row = Fit.wide(theme.controls().box(box, 4));
        back = theme.controls().button(row, EditorWords.get("back"), () -> turn(-1));
        next = theme.controls().mainButton(row, EditorWords.get("next"), () -> turn(1));
        Fit.right(theme.controls().button(row, EditorWords.get("leave"), host::leave));
        theme.controls().button(row, EditorWords.get("discard"), host::discard);
        fill();
    }

    private void turn(int by) {
        Section to = Section.values()[now.ordinal() + by];
        tabs.show(to.ordinal());
        open(to);
        focus();
    }

    /** Goes to another step; what was left is told of when one comes back. */
    private void open(Section to) {
        now = to;
        fill();
    }

    private void fill() {
        for (Control old : scroller.content().getChildren()) {
            old.dispose();
        }
        if (now == Section.LOOK) {
            view = Optional.empty();
            new LookOver(scroller.content(), theme, host, this::go).fill(look());
        } else {
            view = Optional.of(new SectionView(scroller.content(), theme, now, this));
            if (text.texts().keySet().stream().anyMatch(path -> Section.of(path) == now)) {
                view.get().tellAll();
            }
        }
        back.setEnabled(now != Section.KIT);
        next.setEnabled(now != Section.LOOK);
        say();
        scroller.measure();
        box.layout(true, true);
    }

    /** Goes to the field at a path. */
    private void go(String path) {
        now = Section.of(path);
        tabs.show(now.ordinal());
        fill();
        view.ifPresent(shown -> {
            shown.tellAll();
            shown.control(path).ifPresent(Control::setFocus);
        });
    }

    private void say() {
        String where = look().wrong().keySet().stream()
                .map(Section::of)
                .distinct()
                .sorted()
                .map(Section::words)
                .collect(Collectors.joining(", "));
        String words = where.isEmpty() ? EditorWords.get("needed.nothing") : EditorWords.get("needed", where);
        if (!needed.getText().equals(words)) {
            needed.setText(words);
            needed.requestLayout();
        }
    }

    @Override
    public MethodText text() {
        return text;
    }

    @Override
    public void put(MethodText changed) {
        text = changed;
        host.keep(text);
        say();
    }

    @Override
    public MethodLook look() {
        return MethodLook.at(text, version());
    }

    private int version() {
        return host.version(text.text("id").strip());
    }

    @Override
    public void again(String focus) {
        fill();
        view.flatMap(shown -> focus.isEmpty() ? Optional.empty() : shown.control(focus))
                .ifPresentOrElse(Control::setFocus, this::focus);
    }

    @Override
    public String versionWords() {
        return text.text("id").isEmpty() ? "" : EditorWords.get("version", version());
    }

    @Override
    public void grown() {
        scroller.measure();
    }

    /** Puts the focus into the first field of the step. */
    public void focus() {
        view.ifPresentOrElse(SectionView::focus, tabs::setFocus);
    }

    Section section() {
        return now;
    }

    Optional<SectionView> view() {
        return view;
    }

    String needed() {
        return needed.getText();
    }
}
