package wickbench.stock.ui;

import java.math.BigDecimal;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Act;
import wickbench.api.check.BadInput;
import wickbench.shell.ActForm;
import wickbench.shell.PageContext;
import wickbench.stock.Fridge;
import wickbench.stock.Fridges.Imported;
import wickbench.stock.LogShape;
import wickbench.stock.LogShape.DateOrder;
import wickbench.stock.LogShape.Degrees;
import wickbench.widgets.Field;
import wickbench.widgets.Meaning;
import wickbench.widgets.Side;
import wickbench.widgets.Typed;
import wickbench.widgets.Work;

/** The forms of what is done with a fridge: take a logger's file in, type what a thermometer showed, register one. */
final class FridgeForms {
    private static final List<DateOrder> ORDERS = List.of(DateOrder.DMY, DateOrder.MDY, DateOrder.YMD);
    private static final List<Degrees> UNITS = List.of(Degrees.C, Degrees.F);

    private final PageContext context;
    private final StockDoors doors;
    private final FridgeDesk.Known known;
    private final Side side;
    private final Runnable leave;
    private final Consumer<Imported> done;
    private final Set<String> asked = new LinkedHashSet<>();

    FridgeForms(
            PageContext context,
            StockDoors doors,
            FridgeDesk.Known known,
            Side side,
            Runnable leave,
            Consumer<Imported> done) {
        this.context = context;
        this.doors = doors;
        this.known = known;
        this.side = side;
        this.leave = leave;
        this.done = done;
    }

    /** Lets the person choose a logger's file. */
    void choose(Fridge fridge) {
        Optional<Path> chosen = context.files().open(StockUiWords.get("import.choose"), "*.csv;*.txt;*.tsv", "*");
        read(fridge, chosen.map(Path::toString).orElse(""), "");
    }

    /** Shows the form; what the file itself does not tell is asked in it, one question after the other. */
    void read(Fridge fridge, String file, String question) {
        side.fill(content -> {
            ActForm form = form(content, "import", fridge);
            Field<Text> path = form.text("import.file", file);
            if (!question.isEmpty()) {
                form.note(Meaning.CAUTION, StockUiWords.get("import.question"));
            }
            Optional<Field<Combo>> order = asking(LogShape.ASK_ORDER)
                    ? Optional.of(form.choice("import.order", words("import.order.", ORDERS)))
                    : Optional.empty();
            Optional<Field<Combo>> unit = asking(LogShape.ASK_UNIT)
                    ? Optional.of(form.choice("import.unit", words("import.unit.", UNITS)))
                    : Optional.empty();
            Optional<Field<Text>> column =
                    asking(LogShape.ASK_COLUMN) ? Optional.of(form.text("import.column")) : Optional.empty();
            if (!question.isEmpty()) {
                form.note(Meaning.NOTICE, StockUiWords.get("import.remembered"));
            }
            form.<Imported>act(
                    "import.act",
                    known.rights().may(Act.KEEP_STOCK),
                    () -> {
                        Optional<Integer> number = column.flatMap(field -> Typed.whole(field, 1));
                        LogShape said = new LogShape(
                                order.flatMap(field -> chosen(field, ORDERS)),
                                unit.flatMap(field -> chosen(field, UNITS)),
                                Optional.empty(),
                                Optional.empty(),
                                number,
                                Optional.empty());
                        boolean answered = order.isPresent() == said.order().isPresent()
                                && unit.isPresent() == said.unit().isPresent()
                                && column.isPresent() == number.isPresent();
                        return answered ? reading(path, fridge, said) : Optional.empty();
                    },
                    done,
                    failure -> ask(failure, fridge, path));
            form.focus();
        });
    }

    private Optional<Work<Imported>> reading(Field<Text> path, Fridge fridge, LogShape said) {
        path.clear();
        try {
            Path file = Path.of(path.control().getText().strip());
            return Optional.of(progress -> doors.fridges()
                    .read(file, fridge.id(), said, progress, known.rights().by()));
        } catch (InvalidPathException e) {
            path.complain(StockUiWords.get("import.path"));
            return Optional.empty();
        }
    }

    private boolean asking(String field) {
        return asked.contains(field);
    }

    /** Adds the question that the file raised; anything else is no question. */
    private boolean ask(Exception failure, Fridge fridge, Field<Text> path) {
        if (failure instanceof BadInput bad) {
            String field = bad.complaints().get(0).field();
            boolean question = Set.of(LogShape.ASK_ORDER, LogShape.ASK_UNIT, LogShape.ASK_COLUMN)
                    .contains(field);
            if (question && asked.add(field)) {
                read(fridge, path.control().getText(), field);
                return true;
            }
        }
        return false;
    }

    private static <E extends wickbench.api.words.Coded> List<String> words(String key, List<E> codes) {
        return codes.stream().map(code -> StockUiWords.get(key + code.code())).toList();
    }

    private static <E> Optional<E> chosen(Field<Combo> field, List<E> codes) {
        int at = field.control().getSelectionIndex();
        if (at < 0) {
            field.complain(StockUiWords.get("import.answer"));
            return Optional.empty();
        }
        field.clear();
        return Optional.of(codes.get(at));
    }

    /** Asks for what a thermometer with memory showed. */
    void measured(Fridge fridge) {
        side.fill(content -> {
            ActForm form = form(content, "measured", fridge);
            Field<Text> from = form.text("measured.from");
            Field<Text> to = form.text("measured.to", known.times().minute(known.now()));
            Field<Text> low = form.text("measured.low");
            Field<Text> high = form.text("measured.high");
            form.<Imported>act(
                    "measured.act",
                    known.rights().may(Act.KEEP_STOCK),
                    () -> {
                        Optional<Instant> since = Typed.time(from, known.times().zone());
                        Optional<Instant> until = Typed.time(to, known.times().zone());
                        Optional<BigDecimal> least = Typed.amount(low);
                        Optional<BigDecimal> most = Typed.amount(high);
                        return since.isEmpty() || until.isEmpty() || least.isEmpty() || most.isEmpty()
                                ? Optional.empty()
                                : Optional.of(progress -> doors.fridges()
                                        .measured(
                                                fridge.id(),
                                                since.get(),
                                                until.get(),
                                                least.get(),
                                                most.get(),
                                                known.rights().by()));
                    },
                    done);
            form.focus();
        });
    }

    void register(Consumer<Fridge> registered) {
        side.fill(content -> {
            ActForm form = Forms.begin(content, context, "register", side::measure, leave);
            Field<Text> id = form.text("register.id");
            Field<Text> name = form.text("register.name");
            Field<Text> low = form.text("register.low");
            Field<Text> high = form.text("register.high");
            Field<Text> logger = form.text("register.logger");
            form.<Fridge>act(
                    "register.act",
                    known.rights().may(Act.KEEP_STOCK),
                    () -> {
                        Optional<String> which = Typed.words(id);
                        Optional<String> called = Typed.words(name);
                        Optional<BigDecimal> least = Typed.amount(low);
                        Optional<BigDecimal> most = Typed.amount(high);
                        if (which.isEmpty() || called.isEmpty() || least.isEmpty() || most.isEmpty()) {
                            return Optional.empty();
                        }
                        Fridge fridge = new Fridge(
                                which.get(),
                                called.get(),
                                least.get(),
                                most.get(),
                                Typed.some(logger),
                                Optional.empty(),
                                List.of());
                        return Optional.of(progress ->
                                doors.fridges().register(fridge, known.rights().by()));
                    },
                    registered);
            form.focus();
        });
    }

    private ActForm form(Composite content, String key, Fridge fridge) {
        return Forms.begin(content, context, key, side::measure, leave, fridge.id(), fridge.name());
    }
}
