package wickbench.training.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.drill.StepWedge;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** Lets a person count the spots on a step wedge, to see that the screen and the room hide little. */
final class WedgeStage {
    private static final int NUMBER = 260;

    private final PageContext context;
    private final Then then;
    private final Composite wedge;
    private final Composite answers;
    private List<Field<Text>> fields = List.of();
    private StepWedge shown;
    private long seed;

    /** What comes after. */
    interface Then {
        /** Every spot was seen. */
        void seen();

        void stop();

        /** It needs other room than before. */
        void grown();
    }

    WedgeStage(Composite room, PageContext context, long seed, Then then) {
        this.context = context;
        this.then = then;
        this.seed = seed;
        Theme theme = context.theme();
        theme.controls().label(room, Type.HEADING, TrainingUiWords.get("wedge.heading"));
        theme.controls().text(room, Type.BODY, TrainingUiWords.get("wedge.what"));
        wedge = theme.controls().box(room, 1);
        answers = Fit.width(theme.controls().box(room, 1), theme.px(2 * NUMBER));
        Composite buttons = theme.controls().row(room);
        theme.controls().mainButton(buttons, TrainingUiWords.get("wedge.check"), this::check);
        theme.controls().button(buttons, TrainingUiWords.get("drill.stop"), then::stop);
        draw(List.of());
    }

    void focus() {
        fields.get(0).control().setFocus();
    }

    private void draw(List<StepWedge.End> wrong) {
        clear(wedge);
        clear(answers);
        shown = StepWedge.of(seed);
        Theme theme = context.theme();
        Form form = new Form(answers, theme);
        fields = new ArrayList<>();
        for (StepWedge.Row row : shown.rows()) {
            String end = TrainingUiWords.get("wedge.end." + row.end().code());
            new Wedge(wedge, theme, row, end);
            Field<Text> field = form.text(TrainingUiWords.get("wedge.count", end));
            field.control().setTextLimit(1);
            field.control().addListener(SWT.DefaultSelection, event -> check());
            if (wrong.contains(row.end())) {
                field.complain(TrainingUiWords.get("wedge.wrong." + row.end().code()));
            }
            fields.add(field);
        }
        then.grown();
    }

    private void check() {
        List<Integer> counted = fields.stream()
                .map(field -> field.control().getText().strip())
                .map(text -> text.matches("[0-9]") ? Integer.parseInt(text) : -1)
                .collect(Collectors.toList());
        List<StepWedge.End> wrong = shown.wrong(counted);
        if (wrong.isEmpty()) {
            then.seen();
            return;
        }
        // other spots, or the same count would be tried until it fits
        seed++;
        draw(wrong);
        focus();
    }

    private static void clear(Composite box) {
        for (org.eclipse.swt.widgets.Control old : box.getChildren()) {
            old.dispose();
        }
    }
}
