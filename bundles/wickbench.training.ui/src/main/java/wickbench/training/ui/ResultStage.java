package wickbench.training.ui;

import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.api.authority.Actor;
import wickbench.api.person.PersonId;
import wickbench.drill.DrillResult;
import wickbench.drill.DrillResult.Caution;
import wickbench.shell.PageContext;
import wickbench.widgets.ChartView;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** Tells what a drill found, and keeps it if whoever did it wants to. */
final class ResultStage {
    private static final int CHART = 300;

    private final PageContext context;
    private final TrainingDoors doors;
    private final DrillState state;
    private final Runnable kept;
    private final Button keep;
    private final Button again;
    private final Label said;

    ResultStage(
            Composite room, PageContext context, TrainingDoors doors, DrillState state, Runnable kept, Runnable anew) {
        this.context = context;
        this.doors = doors;
        this.state = state;
        this.kept = kept;
        Theme theme = context.theme();
        DrillResult result = state.drill().result();
        theme.controls().text(room, Type.HEADING, headline(result));
        for (Caution caution : Caution.values()) {
            if (result.cautions().contains(caution)) {
                Fit.wide(
                        new Note(room, theme, Meaning.NOTICE, TrainingUiWords.get("result.caution." + caution.code())));
            }
        }
        facts(room, theme, result);
        Composite buttons = theme.controls().row(room);
        keep = theme.controls().mainButton(buttons, TrainingUiWords.get("result.keep"), this::keep);
        again = theme.controls().button(buttons, TrainingUiWords.get("result.again"), anew);
        said = theme.controls().text(room, Type.SMALL, "");
        ChartView chart = new ChartView(room, context, doors.painter());
        GridData data = new GridData(GridData.FILL_HORIZONTAL);
        data.heightHint = theme.px(CHART);
        chart.setLayoutData(data);
        chart.chart(ContrastCurve.of(result));
        keepable();
    }

    void focus() {
        (keep.isEnabled() ? keep : again).setFocus();
    }

    private static String headline(DrillResult result) {
        if (result.cautions().contains(Caution.STRONGER)) {
            return TrainingUiWords.get("result.stronger", Percent.of(result.lower()));
        }
        return result.cautions().contains(Caution.FAINTER)
                ? TrainingUiWords.get("result.fainter", Percent.of(result.upper()))
                : TrainingUiWords.get("result.threshold", Percent.of(result.threshold()));
    }

    private static void facts(Composite room, Theme theme, DrillResult result) {
        new Facts(room, theme)
                .add(
                        TrainingUiWords.get("result.limits"),
                        TrainingUiWords.get(
                                "result.limits.say",
                                Percent.range(result.lower(), result.upper()),
                                Percent.of(result.confidence())))
                .add(
                        TrainingUiWords.get("result.alarms"),
                        TrainingUiWords.get("result.alarms.say", result.alarms(), result.blanks()))
                .add(
                        TrainingUiWords.get("result.missed"),
                        TrainingUiWords.get("result.missed.say", result.missed(), result.plain()))
                .add(TrainingUiWords.get("result.strips"), String.valueOf(result.strips()));
    }

    private void keepable() {
        boolean somebody = context.actor().isPresent();
        keep.setEnabled(somebody && !state.kept());
        say(state.kept() ? "" : somebody ? "" : TrainingUiWords.get("result.nobody"));
    }

    private void keep() {
        PersonId who = context.actor().orElseThrow();
        keep.setEnabled(false);
        context.jobs()
                .run(
                        TrainingUiWords.get("result.keeping"),
                        progress -> doors.drills().keep(state.run(), Actor.of(who)),
                        drilled -> {
                            kept.run();
                            String told = TrainingUiWords.get("result.kept", drilled.entry());
                            context.say(told);
                            if (!said.isDisposed()) {
                                say(told);
                                again.setFocus();
                            }
                        },
                        failure -> {
                            if (!said.isDisposed()) {
                                keep.setEnabled(true);
                                say(failure.getMessage());
                            }
                        });
    }

    private void say(String text) {
        said.setText(text);
        said.requestLayout();
    }
}
