package wickbench.ledger.ui;

import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.journal.Entry;
import wickbench.ledger.ResultRow;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.Deciding;
import wickbench.ledger.acts.ReleasePlan;
import wickbench.ledger.acts.Standing;
import wickbench.ledger.acts.Subject;
import wickbench.shell.PageContext;
import wickbench.widgets.Side;

/** The right side of the page: one case, whether a batch or line may go, or a form. */
final class ReleaseSide {
    private final PageContext context;
    private final ActDoors doors;
    private final ActDoors.Known known;
    private final ActSheets sheets;
    private final InstantSource clock;
    private final Runnable changed;
    private final Side side;
    private Optional<ResultRow> shown = Optional.empty();
    private Runnable focus = () -> {};
    private boolean asking;

    /** @param changed runs after something was recorded, and when a form was left */
    ReleaseSide(
            Composite parent,
            PageContext context,
            ActDoors doors,
            ActDoors.Known known,
            InstantSource clock,
            Runnable changed) {
        this.context = context;
        this.doors = doors;
        this.known = known;
        this.clock = clock;
        this.changed = changed;
        sheets = new ActSheets(context, doors, parent.getShell());
        side = new Side(parent, context.theme());
    }

    Composite content() {
        return side.content();
    }

    /** Tells whether a form stands here, which nothing that comes in from outside may take away. */
    boolean asking() {
        return asking;
    }

    void find(UUID result) {
        context.jobs()
                .run(
                        LedgerUiWords.get("release.reading"),
                        progress -> doors.deciding().of(result),
                        found -> found.ifPresentOrElse(
                                this::show, () -> context.say(LedgerUiWords.get("result.absent"))));
    }

    void show(Case of) {
        shown = Optional.of(of.result());
        String sample = of.result().sample();
        fill(content -> new CaseCard(content, context.theme(), known, clock.instant())
                .fill(of, choice -> sheets.decide(choice, sample, known.rights(), known.people(), changed)));
    }

    void answer(Subject subject) {
        context.jobs()
                .run(
                        LedgerUiWords.get("release.reading"),
                        progress -> doors.releasing().standing(subject),
                        this::show);
    }

    private void show(Standing standing) {
        shown = Optional.empty();
        Instant instant = clock.instant();
        fill(content -> new StandingCard(content, context.theme(), known, instant)
                .fill(standing, subject -> sheets.release(subject, known.rights(), known.people(), changed)));
    }

    /** Shows the form for what an outside laboratory reported because of the case that is shown, if one is; and what others did before. */
    void outside() {
        context.jobs()
                .run(
                        LedgerUiWords.get("release.reading"),
                        progress -> doors.deciding().outside(Deciding.MOST_REPORTS),
                        this::outside);
    }

    private void outside(List<Entry> reports) {
        ask(content -> {
            OutsideForm form = new OutsideForm(content, context, doors, known, shown, side::measure, this::leave);
            new OutsideLines(context.theme(), known.times()).list(content, reports, this::leaveFor);
            return form::focus;
        });
    }

    /** Shows the form for what a line asks for, and what is planned now. */
    void plan() {
        context.jobs()
                .run(
                        LedgerUiWords.get("release.reading"),
                        progress -> doors.releasing().plans(),
                        this::plan);
    }

    private void plan(List<ReleasePlan> plans) {
        ask(content -> {
            PlanForm form = new PlanForm(
                    content,
                    context,
                    known,
                    plan -> sheets.plan(plan, known.rights(), known.people(), this::leave),
                    side::measure,
                    this::leave);
            form.list(content, plans);
            return form::focus;
        });
    }

    /** A form that makes itself and says how it takes the focus. */
    private interface Asking {
        Runnable into(Composite content);
    }

    private void ask(Asking form) {
        focus = () -> {};
        fill(content -> focus = form.into(content));
        asking = true;
        focus.run();
    }

    private void leave() {
        asking = false;
        side.clear();
        changed.run();
    }

    /** Shows a case in place of the form. */
    private void leaveFor(UUID result) {
        asking = false;
        find(result);
    }

    private void fill(Consumer<Composite> content) {
        // the page may have been made anew since this was asked
        if (side.control().isDisposed()) {
            return;
        }
        asking = false;
        side.fill(content);
        context.ready();
    }
}
