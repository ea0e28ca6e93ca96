package wickbench.shell;

import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import wickbench.widgets.Controls;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The sheet of keys that F1 shows: those of the page in front, and those that work everywhere; Escape closes it. */
final class KeysSheet {
    private static final List<String> EVERYWHERE = List.of(
            "places",
            "letter",
            "mnemonic",
            "tab",
            "rail",
            "due",
            "alarm",
            "cancel",
            "person",
            "view",
            "larger",
            "first-size",
            "light",
            "guide",
            "help");
    private static final List<String> TABLES = List.of("filter", "copy", "all", "menu", "open");
    private static final List<String> STRIPS = List.of("arrows", "seen", "faint", "not-seen", "damaged", "back");

    private final Theme theme;

    private KeysSheet(Theme theme) {
        this.theme = theme;
    }

    static Shell open(Window window) {
        Theme theme = window.looks().on(window.shell().getDisplay());
        Shell sheet = Sheet.over(window.shell(), theme, ShellWords.get("keys.title"), 2);
        sheet.addListener(SWT.Dispose, event -> theme.dispose());
        KeysSheet keys = new KeysSheet(theme);
        Composite left = keys.column(sheet);
        Composite right = keys.column(sheet);
        List<KeyHint> here = window.front().map(OpenPage::keys).orElse(List.of());
        if (!here.isEmpty()) {
            keys.group(left, ShellWords.get("keys.page"), here);
        }
        keys.group(here.isEmpty() ? left : right, ShellWords.get("keys.everywhere"), named("everywhere", EVERYWHERE));
        keys.group(
                here.size() > EVERYWHERE.size() ? right : left, ShellWords.get("keys.table"), named("table", TABLES));
        keys.group(right, ShellWords.get("keys.strip"), named("strip", STRIPS));
        sheet.pack();
        sheet.setBounds(WindowBounds.middle(window.shell(), sheet.getSize()));
        sheet.open();
        return sheet;
    }

    private static List<KeyHint> named(String group, List<String> keys) {
        Stream<String> names = keys.stream().map(key -> "keys." + group + "." + key);
        return names.map(name -> new KeyHint(ShellWords.get(name + ".key"), ShellWords.get(name)))
                .toList();
    }

    private Composite column(Composite sheet) {
        Composite column = theme.controls().box(sheet, 2);
        ((GridLayout) column.getLayout()).horizontalSpacing = theme.metrics().grid(3);
        column.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, false, false));
        return column;
    }

    private void group(Composite column, String title, List<KeyHint> keys) {
        Controls controls = theme.controls();
        GridData head = new GridData(SWT.LEFT, SWT.END, false, false, 2, 1);
        head.verticalIndent =
                column.getChildren().length == 0 ? 0 : theme.metrics().grid(1.5);
        controls.text(column, Type.HEADING, title).setLayoutData(head);
        for (KeyHint key : keys) {
            controls.label(column, Type.MONO, key.key().replace("&", "&&"));
            controls.label(column, Type.BODY, key.does().replace("&", "&&"));
        }
    }
}
