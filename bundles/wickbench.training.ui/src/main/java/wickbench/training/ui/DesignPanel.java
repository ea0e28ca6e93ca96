package wickbench.training.ui;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
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

/** How many strips of which kind, by which rule it is passed, and what such a round would tell apart. */
final class DesignPanel {
    private static final int FORM = 320;
    private static final int CHART = 260;
    private static final List<String> USUAL = List.of("8", "20", "4", "2", "2");

    private final PageContext context;
    private final TrainingDoors doors;
    private final Runnable grown;
    private final Map<StripClass, Field<Text>> fields = new EnumMap<>(StripClass.class);
    private final RuleFields rule;
    private final Label answer;
    private final Label by;
    private final ChartView chart;
    private int asked;

    DesignPanel(Composite room, PageContext context, TrainingDoors doors, Runnable grown) {
        this.context = context;
        this.doors = doors;
        this.grown = grown;
        Theme theme = context.theme();
        theme.controls().text(room, Type.BODY, TrainingUiWords.get("design.what"));
        Composite halves = Fit.wide(theme.controls().box(room, 2));
        Composite left = theme.controls().box(halves, 1);
        GridData data = new GridData(SWT.FILL, SWT.BEGINNING, false, false);
        data.widthHint = theme.px(FORM);
        left.setLayoutData(data);
        theme.controls().label(left, Type.STRONG, TrainingUiWords.get("design.strips"));
        Form form = new Form(left, theme);
        for (StripClass kind : StripClass.values()) {
            Field<Text> field = form.text(TrainingUiWords.get("class." + kind.code()));
            field.control().setTextLimit(3);
            field.control().setText(USUAL.get(kind.ordinal()));
            field.control().addListener(SWT.Modify, event -> reckon());
            fields.put(kind, field);
        }
        theme.controls().text(left, Type.STRONG, TrainingUiWords.get("design.allowed"));
        rule = new RuleFields(left, theme, this::reckon);
        Composite right = Fit.grow(theme.controls().box(halves, 1));
        answer = theme.controls().text(right, Type.STRONG, "");
        by = theme.controls().text(right, Type.SMALL, "");
        chart = new ChartView(right, context, doors.painter());
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
        typed.addAll(rule.typed());
        return typed;
    }

    void type(List<String> typed) {
        fields.forEach((kind, field) -> field.control().setText(typed.get(kind.ordinal())));
        rule.type(typed.subList(fields.size(), typed.size()));
    }

    /** Takes the numbers of a panel, which says how many strips there are. */
    void panel(Optional<Map<StripClass, Integer>> counts) {
        fields.forEach((kind, field) -> {
            field.control().setEnabled(counts.isEmpty());
            counts.ifPresent(all -> field.control().setText(String.valueOf(all.getOrDefault(kind, 0))));
        });
    }

    /** Returns the strips as typed, and what is allowed where something else than suggested is; empty when a field is wrong. */
    Optional<Wanted> wanted() {
        Map<StripClass, Integer> strips = new EnumMap<>(StripClass.class);
        fields.forEach(
                (kind, field) -> RuleFields.count(field, Design.MOST).ifPresent(count -> strips.put(kind, count)));
        Optional<List<Optional<Integer>>> allowed = rule.allowed();
        return strips.size() < StripClass.values().length
                ? Optional.empty()
                : allowed.map(own -> new Wanted(strips, own));
    }

    private void reckon() {
        int mine = ++asked;
        Optional<Wanted> wanted = wanted();
        if (wanted.isEmpty()) {
            say("", "");
            return;
        }
        context.jobs()
                .run(
                        TrainingUiWords.get("design.reckoning"),
                        progress ->
                                doors.blind().rounds().operating(wanted.get().design(doors), Skill.POOR, Skill.GOOD),
                        found -> {
                            if (mine == asked && !answer.isDisposed()) {
                                show(found);
                            }
                        },
                        failure -> {
                            if (mine == asked && !answer.isDisposed()) {
                                say(String.valueOf(failure.getMessage()), "");
                            }
                        });
    }

    private void show(Operating found) {
        say(
                TrainingUiWords.get(
                        "design.answer",
                        found.design().total(),
                        Percent.of(found.poorPasses()),
                        Percent.of(found.goodFails())),
                TrainingUiWords.get("design.rule", words(found.design().rule())));
        rule.hint(found.design().rule());
        chart.chart(OddsChart.of(found));
    }

    /** Returns a rule in words. */
    static String words(PassRule by) {
        return TrainingUiWords.get(
                "rule", by.nearMissed(), by.clearMissed(), by.falseAlarms(), by.invalidMissed(), by.outsideWindow());
    }

    private void say(String found, String rule) {
        answer.setText(found);
        by.setText(rule);
        answer.requestLayout();
        grown.run();
    }
}
