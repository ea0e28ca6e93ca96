package wickbench.ledger.ui;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Permission;
import wickbench.api.journal.EntryRef;
import wickbench.api.method.Method.Basis;
import wickbench.api.method.Quantity;
import wickbench.api.method.Unit;
import wickbench.api.person.PersonId;
import wickbench.ledger.ResultRow;
import wickbench.ledger.acts.Outside;
import wickbench.reading.ReadingWords;
import wickbench.shell.ActForm;
import wickbench.shell.ActForm.Titled;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Typed;
import wickbench.widgets.Work;

/** The form in which somebody puts down what an outside laboratory reported. */
final class OutsideForm {
    private static final List<Unit> UNITS = List.of(Unit.values());
    private static final List<Basis> BASES = List.of(Basis.values());

    private final PageContext context;
    private final ActDoors doors;
    private final ActDoors.Known known;
    private final Optional<ResultRow> because;
    private final ActForm form;
    private final Field<Text> laboratory;
    private final Field<Text> reference;
    private final Field<Text> sample;
    private final Field<Text> target;
    private final Field<Combo> says;
    private final Field<Text> amount;
    private final Field<Combo> unit;
    private final Field<Combo> basis;
    private final Field<Text> batch;
    private final Field<Text> reported;

    /**
     * Makes it.
     *
     * @param because the result because of which it was asked; its batch and target are offered
     * @param grown told when it has become higher
     * @param leave told when it is done with
     */
    OutsideForm(
            Composite parent,
            PageContext context,
            ActDoors doors,
            ActDoors.Known known,
            Optional<ResultRow> because,
            Runnable grown,
            Runnable leave) {
        this.context = context;
        this.doors = doors;
        this.known = known;
        this.because = because;
        String line = because.map(row -> LedgerUiWords.get("outside.because", row.sample(), row.place()))
                .orElseGet(() -> LedgerUiWords.get("outside.line-of-form"));
        form = new ActForm(
                parent,
                context,
                LedgerUiWords::get,
                new Titled(LedgerUiWords.get("outside.title"), line),
                grown,
                leave);
        laboratory = form.text("outside.laboratory");
        reference = form.text("outside.reference");
        sample = form.text("outside.sample");
        target = form.text("outside.target", because.map(ResultRow::target).orElse(""));
        says = form.choice(
                "outside.says",
                List.of(LedgerUiWords.get("outside.detected"), LedgerUiWords.get("outside.not-detected")));
        amount = form.text("outside.amount");
        unit = form.choice(
                "outside.unit", Arrays.stream(Unit.values()).map(Unit::symbol).toList());
        basis = form.choice(
                "outside.basis", BASES.stream().map(ReadingWords::text).toList());
        batch = form.text("outside.batch", because.flatMap(ResultRow::batch).orElse(""));
        reported = form.text("outside.reported");
        form.<EntryRef>act("outside.keep", permission(), this::work, entry -> {
            context.say(LedgerUiWords.get("outside.done", entry));
            leave.run();
        });
    }

    void focus() {
        form.focus();
    }

    private Permission permission() {
        return known.rights().actor().isPresent()
                ? new Permission.Allowed()
                : new Permission.Denied("desk.nobody", LedgerUiWords.get("act.nobody"));
    }

    private Optional<Work<EntryRef>> work() {
        PersonId by = known.rights().actor().orElseThrow();
        return said().map(outside -> progress -> doors.deciding().reported(outside, by));
    }

    /** Returns what was typed; every field that is wrong says so. */
    private Optional<Outside> said() {
        List<Optional<String>> words = new ArrayList<>();
        List.of(laboratory, reference, sample, target).forEach(field -> words.add(Typed.words(field)));
        Optional<Boolean> detected = chosen(says).map(at -> at == 0);
        Optional<Instant> at = Typed.time(reported, known.times().zone());
        Optional<Optional<Counted>> counted = counted(detected.orElse(false));
        if (words.stream().anyMatch(Optional::isEmpty) || detected.isEmpty() || at.isEmpty() || counted.isEmpty()) {
            return Optional.empty();
        }
        List<UUID> results = because.map(ResultRow::id).stream().toList();
        return Optional.of(new Outside(
                words.get(0).get(),
                words.get(1).get(),
                words.get(2).get(),
                words.get(3).get(),
                detected.get(),
                counted.get().map(Counted::quantity),
                counted.get().map(Counted::basis),
                Typed.some(batch),
                results,
                at.get()));
    }

    /** An amount, and what it counts. */
    private record Counted(Quantity quantity, Basis basis) {}

    /** Returns the amount with its unit and basis, or none of them; empty when something of it is wrong. */
    private Optional<Optional<Counted>> counted(boolean detected) {
        amount.clear();
        unit.clear();
        basis.clear();
        if (Typed.some(amount).isEmpty()) {
            return Optional.of(Optional.empty());
        }
        Optional<BigDecimal> value = Typed.amount(amount);
        if (value.filter(number -> number.signum() < (detected ? 1 : 0)).isPresent()) {
            amount.complain(LedgerUiWords.get("outside.amount-above"));
            return Optional.empty();
        }
        Optional<Unit> in = chosen(unit).map(UNITS::get);
        Optional<Basis> of = chosen(basis).map(BASES::get);
        return value.isEmpty() || in.isEmpty() || of.isEmpty()
                ? Optional.empty()
                : Optional.of(Optional.of(new Counted(new Quantity(value.get(), in.get()), of.get())));
    }

    private static Optional<Integer> chosen(Field<Combo> field) {
        int at = field.control().getSelectionIndex();
        if (at < 0) {
            field.complain(LedgerUiWords.get("form.choose"));
            return Optional.empty();
        }
        field.clear();
        return Optional.of(at);
    }
}
