package wickbench.shell;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import wickbench.widgets.Controls;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The sheet of keys that F1 shows; Escape closes it. */
final class KeysSheet {
    private static final List<String> EVERYWHERE =
            List.of("places", "mnemonic", "rail", "due", "larger", "first-size", "light", "guide", "help");
    private static final List<String> TABLES = List.of("filter", "copy", "all", "menu", "open");
    private static final List<String> BENCH = List.of("started", "read", "record");
    private static final List<String> STRIPS = List.of("arrows", "seen", "faint", "not-seen", "damaged", "back");

    private KeysSheet() {}

    static Shell open(Window window) {
        Theme theme = window.looks().on(window.shell().getDisplay());
        Shell sheet = Sheet.over(window.shell(), theme, ShellWords.get("keys.title"), 2);
        sheet.addListener(SWT.Dispose, event -> theme.dispose());
        group(sheet, theme, "everywhere", EVERYWHERE);
        group(sheet, theme, "table", TABLES);
        group(sheet, theme, "bench", BENCH);
        group(sheet, theme, "strip", STRIPS);
        sheet.pack();
        sheet.setBounds(WindowBounds.middle(window.shell(), sheet.getSize()));
        sheet.open();
        return sheet;
    }

    private static void group(Composite sheet, Theme theme, String name, List<String> keys) {
        Controls controls = theme.controls();
        GridData head = new GridData(SWT.LEFT, SWT.END, false, false, 2, 1);
        head.verticalIndent =
                sheet.getChildren().length == 0 ? 0 : theme.metrics().grid(1.5);
        controls.text(sheet, Type.HEADING, ShellWords.get("keys." + name)).setLayoutData(head);
        for (String key : keys) {
            controls.label(sheet, Type.MONO, ShellWords.get("keys." + name + "." + key + ".key"));
            controls.label(sheet, Type.BODY, ShellWords.get("keys." + name + "." + key));
        }
    }
}
