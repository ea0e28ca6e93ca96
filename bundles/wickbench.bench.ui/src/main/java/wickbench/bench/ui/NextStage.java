package wickbench.bench.ui;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.api.person.PersonId;
import wickbench.bench.run.Moment;
import wickbench.bench.run.RunState;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Enter;
import wickbench.widgets.Fit;
import wickbench.widgets.PageKeys;
import wickbench.widgets.Scroller;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;
import wickbench.widgets.Wide;

/** What came of the run and what is owed because of it; repeats and dilutions are one key away while the extract is there. */
final class NextStage implements RunStage {
    private static final int OWED = 165;

    private final PageContext context;
    private final RunHand hand;
    private final RunActs acts;
    private final Composite box;
    private final Scroller scroll;
    private final RunResults strips;
    private final OwedTable owed;
    private final OwedLook look;
    private final OwedActs decisions;
    private final OwedButtons chosen;
    private final Button take;
    private final Label words;
    private final Button finish;
    private Optional<RunState> shown = Optional.empty();

    /** @param clock by which the site tells its times, once it is known */
    NextStage(
            Composite parent,
            PageContext context,
            BenchDoors doors,
            RunHand hand,
            RunTimetable timetable,
            Supplier<Optional<SiteClock>> clock,
            RunActs acts) {
        this.context = context;
        this.hand = hand;
        this.acts = acts;
        Theme theme = context.theme();
        Controls controls = theme.controls();
        box = controls.box(parent, 1);
        scroll = new Scroller(box, theme);
        Fit.grow(scroll.control());
        strips = new RunResults(scroll.content(), theme, hand, timetable, acts, this::say);
        Composite card = Fit.grow(controls.card(box, 1));
        // in a low window the strips scroll, and several rows of what is owed stay in sight
        ((GridData) card.getLayoutData()).minimumHeight = theme.px(OWED);
        owed = new OwedTable(card, theme, this::enable);
        OwedForm form = new OwedForm(card, context, this::left);
        look = new OwedLook(context, doors, this::owedLooked, owed::say);
        decisions = new OwedActs(context, doors, form, clock, this::by, this::say, look::look);
        words = Fit.wide(controls.text(box, Type.STRONG, ""));
        Composite bar = Fit.right(controls.box(box, 6));
        Wide.button(controls.button(bar, FlowWords.get("next.back"), this::back), theme);
        chosen = new OwedButtons(bar, theme, owed, decisions);
        take = Wide.button(controls.button(bar, FlowWords.get("next.take"), this::runOwed), theme);
        finish = Wide.button(controls.mainButton(bar, FlowWords.get("next.finish"), this::finish), theme);
        Enter.heard(box, this::finish);
        new PageKeys(
                box,
                Map.of(
                        SWT.F3, this::back,
                        SWT.F4, this::runOwed,
                        SWT.F5, chosen::clean,
                        SWT.F7, chosen::neighbours,
                        SWT.F8, chosen::decide,
                        SWT.F12, this::finish));
    }

    @Override
    public Composite control() {
        return box;
    }

    String said() {
        return words.getText();
    }

    @Override
    public void shown() {
        shown = Optional.empty();
        tick(hand.now());
        if (hand.state().isEmpty()) {
            show(List.of());
            look.look();
            say(FlowWords.get("next.no-run"));
        }
        owed.control().setFocus();
    }

    @Override
    public void tick(Moment now) {
        boolean over = over(now);
        finish.setEnabled(over);
        take.setEnabled((over || hand.state().isEmpty()) && look.byStrip());
        if (!hand.state().equals(shown)) {
            shown = hand.state();
            hand.judged(this::show, this::say);
            look.look();
            say(FlowWords.get(over ? "next.over" : "next.open"));
        }
    }

    private boolean over(Moment now) {
        return hand.state().filter(run -> run.over(now)).isPresent();
    }

    private void owedLooked(List<OwedDue> open) {
        if (!box.isDisposed()) {
            owed.show(open);
            enable();
            tick(hand.now());
        }
    }

    private void enable() {
        chosen.enable();
    }

    private Optional<PersonId> by() {
        return context.actor().or(() -> hand.state().map(RunState::by));
    }

    private void left() {
        look.look();
        owed.control().setFocus();
    }

    private void say(String text) {
        words.setText(text);
        words.requestLayout();
    }

    private void back() {
        acts.go(hand.state().isPresent() ? Stage.CLOCK : Stage.NEW);
    }

    OwedTable owed() {
        return owed;
    }

    OwedLook look() {
        return look;
    }

    private void runOwed() {
        if (take.isEnabled()) {
            take.setEnabled(false);
            acts.runOwed(this::say);
        }
    }

    private void show(List<Judged> judged) {
        strips.show(judged);
        Enter.heard(strips.control(), this::finish);
        scroll.measure();
    }

    private void finish() {
        if (finish.isEnabled()) {
            finish.setEnabled(false);
            acts.close(this::say);
        }
    }
}
