package wickbench.bench.ui;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.method.Method;
import wickbench.reading.Patterns;
import wickbench.reading.Patterns.Pattern;
import wickbench.widgets.Badge;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.StripDrawing;
import wickbench.widgets.StripSize;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The strip drawn in each of its patterns, with what each says. */
record PatternRow(Composite parent, Theme theme) {
    void fill(Method method) {
        Composite row = Fit.wide(new Composite(parent, SWT.NONE));
        row.setBackground(parent.getBackground());
        RowLayout layout = new RowLayout(SWT.HORIZONTAL);
        layout.wrap = true;
        layout.spacing = theme.metrics().grid(2);
        layout.marginLeft = 0;
        row.setLayout(layout);
        List<Pattern> plain = Patterns.of(method.format(), method.faintTest()).stream()
                .filter(Pattern::plain)
                .toList();
        plain.forEach(pattern -> cell(row, method, pattern));
    }

    private void cell(Composite row, Method method, Pattern pattern) {
        Composite cell = theme.controls().box(row, 1);
        StripDrawing drawing = new StripDrawing(cell, theme, StripSize.SMALL);
        drawing.strip(method.format(), method.marks());
        drawing.answers(pattern.strip().lines());
        center(drawing);
        center(new Badge(cell, theme, Type.SMALL, Mark.of(pattern.outcome())));
        if (pattern.sign()) {
            center(theme.controls().quiet(cell, BenchUiWords.get("card.sign")));
        }
    }

    private static void center(Control control) {
        control.setLayoutData(new GridData(SWT.CENTER, SWT.CENTER, true, false));
    }
}
