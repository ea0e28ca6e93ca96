package wickbench.shell;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import wickbench.widgets.Badge;
import wickbench.widgets.Controls;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Names;
import wickbench.widgets.Shape;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The top of the window: where one is, what is due, who acts, and how it looks. */
final class TopBar {
    private static final int HEIGHT = 56;

    private final Theme theme;
    private final Composite row;
    private final Label station;
    private final Composite marks;
    private final DueBar due;
    private final Button person;
    private final Button view;

    TopBar(Composite parent, Theme theme, Runnable choosePerson, Runnable chooseView) {
        this.theme = theme;
        Controls controls = theme.controls();
        row = new Composite(parent, SWT.NONE);
        row.setBackground(theme.color(theme.palette().raised()));
        GridLayout layout = new GridLayout(6, false);
        layout.marginWidth = theme.metrics().grid(2);
        layout.marginHeight = 0;
        layout.horizontalSpacing = theme.metrics().grid(2);
        row.setLayout(layout);
        GridData data = new GridData(SWT.FILL, SWT.FILL, true, false);
        data.heightHint = theme.px(HEIGHT);
        row.setLayoutData(data);
        middle(new Wordmark(row, theme));
        station = middle(controls.label(row, Type.STRONG, ""));
        marks = middle(controls.box(row, 1));
        due = new DueBar(row, theme);
        person = middle(controls.button(row, ShellWords.get("person.nobody"), choosePerson));
        view = middle(controls.button(row, ShellWords.get("view.menu"), chooseView));
        Names.keys(person, ShellWords.get("keys.everywhere.person.key"));
        Names.keys(view, ShellWords.get("keys.everywhere.view.key"));
        person.setToolTipText(ShellWords.get("keys.everywhere.person.key"));
        view.setToolTipText(ShellWords.get("keys.everywhere.view.key"));
    }

    Button person() {
        return person;
    }

    Button view() {
        return view;
    }

    void station(String name, boolean simulated) {
        station.setText(name);
        empty(marks);
        if (simulated) {
            Mark mark = new Mark(ShellWords.get("clock.simulated"), Shape.DIAMOND, Meaning.NOTICE);
            new Badge(marks, theme, Type.SMALL, mark);
        }
        row.layout(true, true);
    }

    void person(Optional<String> name) {
        person.setText(name.map(text -> ShellWords.get("person.is", text)).orElse(ShellWords.get("person.nobody")));
        row.layout(true, true);
    }

    /** Returns what is due. */
    DueBar due() {
        return due;
    }

    private static void empty(Composite box) {
        for (Control child : box.getChildren()) {
            child.dispose();
        }
    }

    /** Puts a control half way down the bar. */
    private static <C extends Control> C middle(C control) {
        control.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, false, true));
        return control;
    }
}
