package wickbench.ledger.ui;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Permission;
import wickbench.api.report.Report;
import wickbench.api.report.ReportSource.Of;
import wickbench.api.report.ReportSource.Wanted;
import wickbench.ledger.Filter;
import wickbench.ledger.papers.Papers;
import wickbench.shell.ActForm;
import wickbench.shell.ActForm.Titled;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Typed;
import wickbench.widgets.Work;

/** The form in which somebody says which report shall be printed: of what is shown, of a day, a month, a line or a batch. */
final class ReportForm {
    private static final List<Of> SORTS = List.of(Of.DAY, Of.MONTH, Of.LINE, Of.BATCH);

    private final PageContext context;
    private final Papers papers;
    private final Filter shown;
    private final Runnable leave;
    private final ActForm form;
    private final Field<Combo> of;
    private final Field<Text> name;
    private final Field<Text> from;
    private final Field<Text> to;

    /** What is printed, and under which name it is offered to be kept. */
    private record Chosen(String file, Supplier<Report> report) {}

    /**
     * Makes it.
     *
     * @param shown what passes the filters of the page
     * @param grown told when the form has become higher
     * @param leave told when it is done with
     */
    ReportForm(Composite parent, PageContext context, Papers papers, Filter shown, Runnable grown, Runnable leave) {
        this.context = context;
        this.papers = papers;
        this.shown = shown;
        this.leave = leave;
        Titled what = new Titled(LedgerUiWords.get("print.title"), LedgerUiWords.get("print.line"));
        form = new ActForm(parent, context, LedgerUiWords::get, what, grown, leave);
        List<String> choices = new ArrayList<>(List.of(LedgerUiWords.get("print.of.shown")));
        SORTS.forEach(sort -> choices.add(LedgerUiWords.get("print.of." + sort.code())));
        of = form.choice("print.of", choices);
        of.control().select(0);
        name = form.text("print.name");
        from = form.text("print.from");
        to = form.text("print.to");
        of.control().addListener(SWT.Selection, event -> offer());
        form.<java.nio.file.Path>act("print.go", new Permission.Allowed(), this::work, file -> {
            context.say(LedgerUiWords.get("print.done", file));
            leave.run();
        });
        offer();
    }

    void focus() {
        form.focus();
    }

    /** Only what the chosen sort of report asks for can be filled in. */
    private void offer() {
        int at = of.control().getSelectionIndex();
        name.control().setEnabled(at > 0);
        name.hint(at > 0 ? LedgerUiWords.get("print.name." + SORTS.get(at - 1).code()) : "");
        boolean line = at > 0 && SORTS.get(at - 1) == Of.LINE;
        from.control().setEnabled(line);
        to.control().setEnabled(line);
    }

    private Optional<Work<java.nio.file.Path>> work() {
        return chosen().flatMap(chosen -> context.files()
                .save(chosen.file(), "*.pdf", "*.xlsx", "*.jsonl")
                .map(file -> progress -> {
                    papers.print(chosen.report().get(), file);
                    return file;
                }));
    }

    private Optional<Chosen> chosen() {
        int at = of.control().getSelectionIndex();
        if (at == 0) {
            return Optional.of(new Chosen(LedgerUiWords.get("print.file"), () -> papers.results(shown)));
        }
        Of sort = SORTS.get(at - 1);
        Optional<String> said = name(sort);
        Optional<Optional<LocalDate>> first = day(from);
        Optional<Optional<LocalDate>> last = day(to);
        if (said.isEmpty() || first.isEmpty() || last.isEmpty()) {
            return Optional.empty();
        }
        Wanted wanted = new Wanted(sort, said.get(), first.get(), last.get());
        String file = LedgerUiWords.get("print.file." + sort.code(), said.get().replaceAll("[^A-Za-z0-9-]", "_"));
        return Optional.of(new Chosen(file, () -> papers.report(wanted)));
    }

    /** Returns the day, month, line or batch; says what is wrong with it. */
    private Optional<String> name(Of sort) {
        Optional<String> said = Typed.words(name);
        try {
            said.ifPresent(text -> {
                if (sort == Of.DAY) {
                    LocalDate.parse(text);
                } else if (sort == Of.MONTH) {
                    YearMonth.parse(text);
                }
            });
            return said;
        } catch (DateTimeException e) {
            name.complain(LedgerUiWords.get("print.name." + sort.code()));
            return Optional.empty();
        }
    }

    /** Returns the day that was typed, if any; empty when it is none. */
    private static Optional<Optional<LocalDate>> day(Field<Text> field) {
        field.clear();
        return !field.control().isEnabled() || Typed.some(field).isEmpty()
                ? Optional.of(Optional.empty())
                : Typed.date(field).map(Optional::of);
    }
}
