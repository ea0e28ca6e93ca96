package wickbench.training.ui;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.shell.PageContext;
import wickbench.training.Design;
import wickbench.training.Operating;
import wickbench.training.PassRule;
import wickbench.training.Skill;
import wickbench.training.StripClass;
import wickbench.widgets.ChartView;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** How many strips of which kind, and what such a round would tell apart. */
final class DesignPanel {
    private static final int FORM = 300;
    private static final int CHART = 260;
    private static final List<String> USUAL = List.of("8", "20", "4", "2", "2");

    private final PageContext context;
    private final TrainingDoors doors;
    private final Runnable grown;
    private final Map<StripClass, Field<Text>> fields = new EnumMap<>(StripClass.class);
    private final Label answer;
    private final Label rule;
    private final ChartView chart;
    private int asked;

    DesignPanel(Composite room, PageContext context, TrainingDoors doors, Runnable grown) {
        this.context = context;
        this.doors = doors;
        this.grown = grown;
        Theme theme = context.theme();
        theme.controls().label(room, Type.HEADING, TrainingUiWords.get("design.heading"));
        theme.controls().text(room, Type.BODY, TrainingUiWords.get("design.what"));
        Composite halves = Fit.wide(theme.controls().box(room, 2));
        Composite left = theme.controls().box(halves, 1);
        GridData data = new GridData(SWT.FILL, SWT.BEGINNING, false, false);
        data.widthHint = theme.px(FORM);
        left.setLayoutData(data);
        Form form = new Form(left, theme);
        for (StripClass kind : StripClass.values()) {
            Field<Text> field = form.text(TrainingUiWords.get("class." + kind.code()));
            field.control().setTextLimit(3);
            field.control().setText(USUAL.get(kind.ordinal()));
            field.control().addListener(SWT.Modify, event -> reckon());
            fields.put(kind, field);
        }
        answer = theme.controls().text(left, Type.STRONG, "");
        rule = theme.controls().text(left, Type.SMALL, "");
        chart = new ChartView(halves, context, doors.painter());
        GridData wide = new GridData(SWT.FILL, SWT.FILL, true, false);
        wide.heightHint = theme.px(CHART);
        chart.setLayoutData(wide);
        reckon();
    }

    void focus() {
        fields.get(StripClass.BLANK).control().setFocus();
    }

    List<String> typed() {
        List<String> typed = new ArrayList<>();
        fields.values().forEach(field -> typed.add(field.control().getText()));
        return typed;
    }

    void type(List<String> typed) {
        fields.forEach((kind, field) -> field.control().setText(typed.get(kind.ordinal())));
    }

    private void reckon() {
        Map<StripClass, Integer> strips = new EnumMap<>(StripClass.class);
        fields.forEach((kind, field) -> count(field).ifPresent(count -> strips.put(kind, count)));
        int mine = ++asked;
        if (strips.size() < StripClass.values().length) {
            say("", "");
            return;
        }
        context.jobs().run(TrainingUiWords.get("design.reckoning"), progress -> operating(strips), found -> {
            if (mine == asked && !answer.isDisposed()) {
                show(found);
            }
        });
    }

    private Operating operating(Map<StripClass, Integer> strips) {
        PassRule suggested = doors.rounds().suggested(strips, Skill.POOR);
        return doors.rounds().operating(new Design(strips, suggested), Skill.POOR, Skill.GOOD);
    }

    /** A complaint stands at the field; the rest of the form is left alone. */
    private static java.util.Optional<Integer> count(Field<Text> field) {
        String text = field.control().getText().strip();
        if (text.matches("[0-9]{1,3}") && Integer.parseInt(text) <= Design.MOST) {
            field.clear();
            return java.util.Optional.of(Integer.parseInt(text));
        }
        field.complain(TrainingUiWords.get("design.count", Design.MOST));
        return java.util.Optional.empty();
    }

    private void show(Operating found) {
        PassRule by = found.design().rule();
        say(
                TrainingUiWords.get(
                        "design.answer",
                        found.design().total(),
                        Percent.of(found.poorPasses()),
                        Percent.of(found.goodFails())),
                TrainingUiWords.get(
                        "design.rule",
                        by.nearMissed(),
                        by.clearMissed(),
                        by.falseAlarms(),
                        by.invalidMissed(),
                        by.outsideWindow()));
        chart.chart(chart(found));
    }

    private static Chart chart(Operating found) {
        List<Operating.Point> curve = found.curve();
        return new Chart(
                TrainingUiWords.get("design.chart"),
                Axis.linear(TrainingUiWords.get("design.chart.near"), "%"),
                Axis.linear(TrainingUiWords.get("design.chart.passes"), "%"),
                List.of(new Series(
                        TrainingUiWords.get("design.chart.passes"),
                        Series.Mark.LINE,
                        curve.stream().mapToDouble(point -> 100 * point.near()).toArray(),
                        curve.stream()
                                .mapToDouble(point -> 100 * point.passes())
                                .toArray())),
                List.of());
    }

    private void say(String found, String by) {
        answer.setText(found);
        rule.setText(by);
        answer.requestLayout();
        grown.run();
    }
}
