package wickbench.bench.ui;

import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.bench.run.RunPlanning;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Type;

/** How long one's hands need for a strip, and one's eyes; remembered at this desk. */
final class PaceFields {
    private static final String KEY = "bench.pace";
    private static final String HANDS_ON = "hands-on-s";
    private static final String LOOK = "look-s";
    private static final long LONGEST_SECONDS = 3600;

    private final PageContext context;
    private final Consumer<RunPlanning> set;
    private final Field<Text> handsOn;
    private final Field<Text> look;

    /** @param set hears of what was remembered, and of each change that is whole */
    PaceFields(Composite parent, PageContext context, Consumer<RunPlanning> set) {
        this.context = context;
        this.set = set;
        Composite card = Fit.wide(context.theme().controls().card(parent, 1));
        context.theme().controls().label(card, Type.STRONG, FlowWords.get("pace.head"));
        Form form = new Form(card, context.theme());
        handsOn = form.text(FlowWords.get("pace.hands-on"));
        look = form.text(FlowWords.get("pace.look"));
        RunPlanning before = remembered().orElse(RunPlanning.USUAL);
        handsOn.control().setText(Long.toString(before.handsOn().toSeconds()));
        look.control().setText(Long.toString(before.look().toSeconds()));
        set.accept(before);
        handsOn.control().addListener(SWT.Modify, event -> changed());
        look.control().addListener(SWT.Modify, event -> changed());
    }

    Field<Text> handsOn() {
        return handsOn;
    }

    Field<Text> look() {
        return look;
    }

    private Optional<RunPlanning> remembered() {
        return context.memory().recall(KEY).flatMap(PaceFields::read);
    }

    /** What was kept by hand or by another version and is not understood counts as nothing. */
    private static Optional<RunPlanning> read(Json.Obj kept) {
        Fields fields = Fields.of(KEY, kept);
        long handsOn = fields.whole(HANDS_ON);
        long look = fields.whole(LOOK);
        Checked<Optional<RunPlanning>> read = fields.finish(
                () -> within(handsOn) && within(look) ? Optional.of(planning(handsOn, look)) : Optional.empty());
        return read instanceof Checked.Good<Optional<RunPlanning>> good ? good.value() : Optional.empty();
    }

    private void changed() {
        Optional<Long> hands = typed(handsOn);
        Optional<Long> eyes = typed(look);
        if (hands.isPresent() && eyes.isPresent()) {
            context.memory().keep(KEY, Json.object().with(HANDS_ON, hands.get()).with(LOOK, eyes.get()));
            set.accept(planning(hands.get(), eyes.get()));
        }
    }

    private static Optional<Long> typed(Field<Text> field) {
        String text = field.control().getText().strip();
        Optional<Long> seconds = Optional.of(text)
                .filter(some -> some.matches("[0-9]{1,4}"))
                .map(Long::valueOf)
                .filter(PaceFields::within);
        if (seconds.isPresent()) {
            field.clear();
        } else {
            field.complain(FlowWords.get("pace.expected"));
        }
        return seconds;
    }

    private static boolean within(long seconds) {
        return seconds >= 1 && seconds <= LONGEST_SECONDS;
    }

    private static RunPlanning planning(long handsOn, long look) {
        return new RunPlanning(Duration.ofSeconds(handsOn), Duration.ofSeconds(look));
    }
}
