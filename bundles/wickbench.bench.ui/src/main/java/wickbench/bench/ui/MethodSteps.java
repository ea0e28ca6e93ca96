package wickbench.bench.ui;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.api.method.Method.Step;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.Spans;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The steps of a method, numbered, each with how much, how long and what to mind. */
record MethodSteps(Composite parent, Theme theme) {
    void fill(List<Step> steps) {
        Composite grid = Fit.wide(theme.controls().box(parent, 2));
        for (int i = 0; i < steps.size(); i++) {
            step(grid, i + 1, steps.get(i));
        }
    }

    private void step(Composite grid, int number, Step step) {
        Label digit = theme.controls().label(grid, Type.STRONG, Integer.toString(number));
        digit.setForeground(theme.color(theme.palette().accent()));
        digit.setLayoutData(new GridData(SWT.END, SWT.BEGINNING, false, false));
        Composite words = Fit.wide(theme.controls().box(grid, 1));
        theme.controls().text(words, Type.BODY, step.text());
        String much = much(step);
        if (!much.isEmpty()) {
            theme.controls().text(words, Type.STRONG, much);
        }
        step.caution()
                .ifPresent(text ->
                        Fit.wide(new MarkedLine(words, theme, new Mark("", Shape.TRIANGLE, Meaning.CAUTION), text)));
    }

    private static String much(Step step) {
        String quantity = step.quantity().map(Object::toString).orElse("");
        String lasts = step.lasts().map(Spans::words).orElse("");
        return quantity.isEmpty() || lasts.isEmpty() ? quantity + lasts : quantity + ", " + lasts;
    }
}
