package wickbench.training.ui;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.drill.DrillPlan;
import wickbench.shell.PageContext;
import wickbench.training.Drilled;
import wickbench.widgets.Column;
import wickbench.widgets.RowSource;
import wickbench.widgets.Sort;
import wickbench.widgets.TableKit;
import wickbench.widgets.TableSpec;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** Says what a drill is, and what came of those before. */
final class BeginStage {
    private static final int TABLE = 260;

    private final Button begin;

    BeginStage(Composite room, PageContext context, List<Drilled> before, Runnable wedge) {
        Theme theme = context.theme();
        theme.controls()
                .text(
                        room,
                        Type.BODY,
                        TrainingUiWords.get("drill.what", DrillPlan.USUAL.least(), DrillPlan.USUAL.most()));
        theme.controls().text(room, Type.BODY, TrainingUiWords.get("drill.how"));
        begin = theme.controls().mainButton(room, TrainingUiWords.get("drill.begin"), wedge);
        if (context.actor().isEmpty()) {
            theme.controls().text(room, Type.SMALL, TrainingUiWords.get("drill.nobody"));
        } else if (before.isEmpty()) {
            theme.controls().text(room, Type.SMALL, TrainingUiWords.get("drill.none"));
        } else {
            theme.controls().label(room, Type.HEADING, TrainingUiWords.get("drill.before"));
            Control table = new TableKit<>(room, context, table(before)).control();
            GridData data = new GridData(GridData.FILL_HORIZONTAL);
            data.heightHint = theme.px(TABLE);
            table.setLayoutData(data);
        }
    }

    void focus() {
        begin.setFocus();
    }

    private static TableSpec<Drilled> table(List<Drilled> before) {
        List<Column<Drilled>> columns = List.of(
                column("at", 150, each -> Times.minute(each.at(), ZoneId.systemDefault())),
                column("threshold", 110, each -> Percent.of(each.threshold())).rightAligned(),
                column("limits", 150, each -> Percent.range(each.lower(), each.upper()))
                        .rightAligned(),
                column("alarms", 130, each -> TrainingUiWords.get("of", each.alarms(), each.blanks()))
                        .rightAligned(),
                column("missed", 150, each -> TrainingUiWords.get("of", each.missed(), each.plain()))
                        .rightAligned());
        return new TableSpec<>(
                "training.drills",
                TrainingUiWords.get("drill.before"),
                columns,
                RowSource.of(before, columns),
                Optional.of(new Sort("at", false)),
                TrainingUiWords.get("drill.none"));
    }

    private static Column<Drilled> column(String id, int width, java.util.function.Function<Drilled, String> text) {
        return Column.of(id, TrainingUiWords.get("drill.column." + id), width, text);
    }
}
