package wickbench.bench.ui.editor;

import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Shape;
import wickbench.widgets.Theme;

/** The last step: what is still wrong with its way there, or the method to be issued. */
record LookOver(Composite parent, Theme theme, EditorHost host, Consumer<String> go) {
    void fill(MethodLook look) {
        if (look.method().isPresent()) {
            host.offer(parent, look.method().get());
            return;
        }
        Fit.wide(new Note(
                parent,
                theme,
                Meaning.CAUTION,
                EditorWords.get("look.wrong", look.wrong().size())));
        look.wrong().forEach((path, text) -> {
            Section section = Section.of(path);
            Composite row = Fit.wide(theme.controls().box(parent, 2));
            Fit.wide(new MarkedLine(
                    row,
                    theme,
                    new Mark("", Shape.TRIANGLE, Meaning.ALARM),
                    EditorWords.get("look.line", section.words(path), text)));
            theme.controls().buttonOfMany(row, EditorWords.get("look.go", section.words()), () -> go.accept(path));
        });
    }
}
