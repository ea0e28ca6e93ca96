package wickbench.bench.ui;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.person.PersonId;
import wickbench.bench.run.Moment;
import wickbench.bench.run.RunStrip;
import wickbench.shell.PageContext;
import wickbench.widgets.Enter;
import wickbench.widgets.Fit;
import wickbench.widgets.PageKeys;
import wickbench.widgets.Scroller;
import wickbench.widgets.Theme;

/** The form for the strips of a run, beside those that it has so far; or for one more of a run under way. */
final class NewRunStage implements RunStage, NewRunHearer {
    private final Composite box;
    private final StripEntry entry;
    private final PaceFields pace;
    private final NewRunSide side;
    private final NewRunActs pressed;
    private final StripFiller filler;
    private final NewRunFoot foot;
    private final DraftKeeping drafts;

    NewRunStage(
            Composite parent,
            PageContext context,
            BenchDoors doors,
            RunHand hand,
            RunTimetable timetable,
            RunActs acts) {
        Theme theme = context.theme();
        box = theme.controls().box(parent, 1);
        Composite columns = Fit.grow(theme.controls().box(box, 2));
        Scroller scroll = new Scroller(columns, theme);
        Fit.grow(scroll.control());
        Runnable all = () -> acts.go(Stage.NEXT);
        Runnable take = () -> acts.runOwed(this::say);
        entry = new StripEntry(scroll.content(), box, context, doors, this::looked);
        pace = new PaceFields(scroll.content(), context, timetable::planning);
        side = new NewRunSide(columns, context, doors, entry, this::owedLooked, all);
        pressed = new NewRunActs(entry, side.strips(), hand, timetable, acts, this);
        filler = new StripFiller(context, doors, entry, side.strips(), this);
        foot = new NewRunFoot(box, theme, entry, side.strips(), pressed, take, filler::controls);
        drafts = new DraftKeeping(entry, side.strips());
        Enter.heard(box, this::enter);
        new PageKeys(
                box,
                Map.of(
                        SWT.F4, take,
                        SWT.F5, pressed::toPlan,
                        SWT.F7, filler::controls,
                        SWT.F8, pressed::removeLast,
                        SWT.F12, all));
    }

    @Override
    public Composite control() {
        return box;
    }

    EntryForm form() {
        return entry.form();
    }

    PaceFields pace() {
        return pace;
    }

    List<RunStrip> strips() {
        return side.strips().all();
    }

    OwedList owedList() {
        return side.owed();
    }

    DraftKeeping drafts() {
        return drafts;
    }

    String said() {
        return foot.said();
    }

    Optional<PersonId> by() {
        return entry.by();
    }

    /** Takes what can be chosen from; before that nothing can be entered. */
    void start(Choices some, SiteClock site) {
        entry.start(some, site);
        side.look();
        drafts.putBack();
    }

    /** Starts over with another run; who, method and lot stay. */
    void another() {
        pressed.another();
    }

    /** One more sample for the run under way, or for a new one. */
    void forRun(boolean underWay) {
        pressed.forRun(underWay);
    }

    @Override
    public void shown() {
        entry.focus();
        entry.look();
        side.look();
    }

    @Override
    public void tick(Moment now) {
        // nothing here runs by the clock
    }

    /** Fills in a strip for each part of what is owed that a strip does, once it is known what that is. */
    void owed() {
        filler.wantOwed();
        side.look();
    }

    /** Fills in a strip for each sample of something due, once the methods are known and somebody has said who they are. */
    void due(String key) {
        filler.wantDue(key);
        entry.look();
    }

    private void owedLooked() {
        tell();
        filler.owedKnown(side.owed());
    }

    private void looked() {
        tell();
        filler.personKnown();
    }

    private void tell() {
        foot.tell(filler.waitsForPerson(), side.owed().byStrip());
    }

    @Override
    public void listed(String note) {
        foot.note(note);
        entry.look();
    }

    @Override
    public void say(String text) {
        foot.say(text);
    }

    private void enter() {
        if (!entry.takeEnter()) {
            pressed.add();
        }
    }
}
