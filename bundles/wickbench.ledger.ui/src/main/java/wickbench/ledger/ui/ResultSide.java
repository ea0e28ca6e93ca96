package wickbench.ledger.ui;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.authority.Act;
import wickbench.api.authority.Permission.Denied;
import wickbench.api.person.PersonId;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.ResultRow;
import wickbench.shell.PageContext;
import wickbench.widgets.Fit;
import wickbench.widgets.Job;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Scroller;

/** The right side of the page: one result in full, or a form. */
final class ResultSide {
    private final PageContext context;
    private final Ledger ledger;
    private final Ledger.Known known;
    private final ActDoors doors;
    private final ActSheets sheets;
    private final Consumer<Optional<ResultRow>> shown;
    private final Runnable corrected;
    private final Scroller side;
    private Optional<Job> finding = Optional.empty();
    private boolean asking;

    /**
     * Makes it empty.
     *
     * @param shown hears which result is shown once it is; empty when there is none such
     * @param corrected runs after a correction
     */
    ResultSide(
            Composite parent,
            PageContext context,
            Ledger ledger,
            Ledger.Known known,
            ActDoors doors,
            Consumer<Optional<ResultRow>> shown,
            Runnable corrected) {
        this.context = context;
        this.ledger = ledger;
        this.known = known;
        this.doors = doors;
        this.shown = shown;
        this.corrected = corrected;
        sheets = new ActSheets(context, doors, parent.getShell());
        side = new Scroller(parent, context.theme());
    }

    /** Shows the result with this entry id, or at this place in the journal. */
    void find(String argument) {
        finding.ifPresent(Job::cancel);
        finding = Optional.of(
                context.jobs().run(LedgerUiWords.get("result.reading"), progress -> ledger.find(argument), this::show));
    }

    private void show(Optional<Ledger.Shown> found) {
        clear();
        found.ifPresentOrElse(this::fill, () -> context.say(LedgerUiWords.get("result.absent")));
        shown.accept(found.map(result -> result.detail().row()));
        side.measure();
        context.ready();
    }

    private void fill(Ledger.Shown result) {
        ResultRow row = result.detail().row();
        String open = LedgerUiWords.get("correct.open");
        Fit.right(context.theme().controls().button(side.content(), open, () -> correct(row)));
        if (!result.detail().asRecorded()) {
            Fit.wide(new Note(side.content(), context.theme(), Meaning.ALARM, LedgerUiWords.get("result.differs")));
            context.theme()
                    .controls()
                    .button(side.content(), LedgerUiWords.get("result.differs.go"), () -> context.show("journal"));
        }
        new ResultCard(side.content(), context.theme(), known.site(), known.people()).fill(result);
    }

    /**
     * Shows the form that prints reports.
     *
     * @param filter what passes the filters of the page
     * @param leave told when it is done with
     */
    void print(Filter filter, Runnable leave) {
        finding.ifPresent(Job::cancel);
        clear();
        asking = true;
        ReportForm form = new ReportForm(side.content(), context, ledger.papers(), filter, side::measure, () -> {
            blank();
            leave.run();
        });
        side.measure();
        form.focus();
    }

    void blank() {
        clear();
        side.measure();
    }

    private void clear() {
        asking = false;
        for (Control old : side.content().getChildren()) {
            old.dispose();
        }
    }

    /** What is asked before a result is corrected. */
    private record Asked(Optional<Ledger.Shown> found, ActDoors.Rights rights) {}

    /** Opens the form that corrects a result, for who may. */
    private void correct(ResultRow row) {
        var actor = context.actor();
        finding.ifPresent(Job::cancel);
        finding = Optional.of(context.jobs()
                .run(
                        LedgerUiWords.get("result.reading"),
                        progress -> new Asked(ledger.find(row.id().toString()), doors.rights(actor)),
                        asked -> asked.found().ifPresent(found -> correct(found.detail(), asked.rights()))));
    }

    private void correct(ResultDetail result, ActDoors.Rights rights) {
        boolean own = rights.actor().filter(result.row().operator()::equals).isPresent();
        if (!doors.correcting().present()) {
            context.say(LedgerUiWords.get("correct.no-bench"));
        } else if (rights.to(own ? Act.CORRECT_OWN_READING : Act.CORRECT_READING) instanceof Denied denied) {
            context.say(denied.text());
        } else {
            PersonId by = rights.actor().orElseThrow();
            clear();
            asking = true;
            CorrectForm form =
                    new CorrectForm(side.content(), context, known.site().zone(), result, doors.correcting());
            form.buttons(
                    () -> find(result.row().id().toString()),
                    changed ->
                            sheets.correct(result, changed, by, rights.keyed(), known.people(), form::complain, () -> {
                                find(result.row().id().toString());
                                corrected.run();
                            }));
            side.measure();
            form.focus();
        }
    }

    /** Tells whether a correction is being filled in, which nothing but its own buttons and another choice may end. */
    boolean asking() {
        return asking;
    }

    Scroller scroller() {
        return side;
    }
}
