package wickbench.shell;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.widgets.Badge;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Focus;
import wickbench.widgets.Heading;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Names;
import wickbench.widgets.Note;
import wickbench.widgets.Scroller;
import wickbench.widgets.Shape;
import wickbench.widgets.Type;

/** The open page: a card for each step, in order; the first that is not done has the main button. */
final class StartPart implements PagePart {
    private static final int BADGE = 104;

    private final PageContext context;
    private final Supplier<List<FirstStep>> steps;
    private final Scroller scroller;
    private Optional<List<FirstStep>> shown = Optional.empty();
    private Optional<Button> next = Optional.empty();

    StartPart(Composite parent, PageContext context, Supplier<List<FirstStep>> steps) {
        this.context = context;
        this.steps = steps;
        Composite page = context.theme().controls().box(parent, 1);
        new Heading(page, context.theme(), ShellWords.get("first.heading"), ShellWords.get("first.line"));
        scroller = new Scroller(page, context.theme());
        Fit.grow(scroller.control());
        load();
    }

    private void load() {
        context.jobs().run(ShellWords.get("work.first"), progress -> steps.get(), this::take);
    }

    /** What leads to a page that is not installed is nobody's step here. */
    private void take(List<FirstStep> all) {
        List<FirstStep> here =
                all.stream().filter(step -> context.has(step.page())).toList();
        if (!Optional.of(here).equals(shown)) {
            shown = Optional.of(here);
            boolean wanted = Focus.within(scroller.content());
            for (Control old : scroller.content().getChildren()) {
                old.dispose();
            }
            next = Optional.empty();
            fill(here);
            scroller.content().layout(true, true);
            scroller.measure();
            if (wanted) {
                focus();
            }
        }
        context.ready();
    }

    private void fill(List<FirstStep> here) {
        Optional<FirstStep> first = here.stream().filter(step -> !step.done()).findFirst();
        if (first.isEmpty()) {
            String words = ShellWords.get(here.isEmpty() ? "first.none" : "first.all-done");
            Fit.wide(new Note(
                    scroller.content(), context.theme(), here.isEmpty() ? Meaning.NOTICE : Meaning.CALM, words));
        }
        for (int i = 0; i < here.size(); i++) {
            card(i + 1, here.get(i), first.filter(here.get(i)::equals).isPresent());
        }
    }

    private void card(int number, FirstStep step, boolean isNext) {
        Controls controls = context.theme().controls();
        Composite card = Fit.wide(controls.card(scroller.content(), 3));
        ((GridLayout) card.getLayout()).horizontalSpacing =
                context.theme().metrics().grid(2);
        Composite state = Fit.width(controls.box(card, 1), context.theme().px(BADGE));
        new Badge(state, context.theme(), Type.SMALL, mark(step, isNext));
        Composite words = Fit.wide(controls.box(card, 1));
        String title = ShellWords.get("first.step", number, step.title());
        controls.text(words, Type.STRONG, title);
        controls.text(words, Type.BODY, step.text())
                .setForeground(context.theme().color(context.theme().palette().quiet()));
        String verb = ShellWords.get("first.go", marked(number));
        Runnable act = () -> go(step);
        Button button = isNext ? controls.mainButton(card, verb, act) : controls.button(card, verb, act);
        Names.give(button, () -> title);
        if (isNext) {
            next = Optional.of(button);
        }
    }

    /** Returns a number with the mark before its last digit, which goes with Alt: the tenth is Alt+0. */
    private static String marked(int number) {
        String digits = Integer.toString(number);
        return digits.substring(0, digits.length() - 1) + "&" + digits.charAt(digits.length() - 1);
    }

    private void go(FirstStep step) {
        if (step.argument().isEmpty()) {
            context.show(step.page());
        } else {
            context.show(step.page(), step.argument());
        }
    }

    private static Mark mark(FirstStep step, boolean isNext) {
        if (step.done()) {
            return new Mark(ShellWords.get("first.done"), Shape.DISC, Meaning.CALM);
        }
        return isNext
                ? new Mark(ShellWords.get("first.next"), Shape.TRIANGLE, Meaning.NOTICE)
                : new Mark(ShellWords.get("first.later"), Shape.RING, Meaning.NEUTRAL);
    }

    @Override
    public void shown() {
        load();
        focus();
    }

    @Override
    public void focus() {
        next.ifPresentOrElse(Control::setFocus, scroller.content()::setFocus);
    }

    @Override
    public void newsCame() {
        load();
    }
}
