package wickbench.stock.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import wickbench.api.lot.LotId;
import wickbench.shell.PageContext;
import wickbench.stock.Lot;
import wickbench.stock.StockTerms;
import wickbench.stock.Trace;
import wickbench.stock.Use;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Names;
import wickbench.widgets.Room;
import wickbench.widgets.TableKit;
import wickbench.widgets.Type;

/** The trace: every result read with a lot, or the lot behind a result, as a table and as a recall list. */
final class TraceRoom implements Room {
    private static final int WIDE = 320;

    private final PageContext context;
    private final StockDoors doors;
    private final Composite room;
    private final Text asked;
    private final Label said;
    private final Button list;
    private Optional<TableKit<Use>> table = Optional.empty();
    private Optional<Found> shown = Optional.empty();
    private volatile List<Use> uses = List.of();

    /** What was asked for, and what hangs on it. */
    private record Found(String subject, Trace trace, SiteTimes times) {}

    TraceRoom(Composite parent, PageContext context, StockDoors doors) {
        this.context = context;
        this.doors = doors;
        Controls controls = context.theme().controls();
        room = controls.box(parent, 1);
        Composite bar = Fit.wide(controls.box(room, 4));
        controls.label(bar, Type.BODY, StockUiWords.get("trace.ask"));
        asked = Names.give(
                Fit.width(controls.field(bar), context.theme().px(WIDE)), () -> StockUiWords.get("trace.ask"));
        asked.addListener(SWT.DefaultSelection, event -> reload());
        controls.mainButton(bar, StockUiWords.get("trace.show"), this::reload);
        list = controls.button(bar, StockUiWords.get("trace.list"), this::choose);
        list.setEnabled(false);
        said = controls.text(room, Type.BODY, StockUiWords.get("trace.first"));
        reload();
    }

    @Override
    public Composite control() {
        return room;
    }

    @Override
    public void reload() {
        String subject = asked.getText().strip();
        context.jobs()
                .run(
                        StockUiWords.get("trace.reading"),
                        progress -> find(subject),
                        this::take,
                        failure -> say(String.valueOf(failure.getMessage())));
    }

    /** A result is asked for by its id, which no lot looks like; without a question the lot that expires first is shown. */
    private Optional<Found> find(String subject) {
        SiteTimes times = new SiteTimes(doors.room().zone());
        Optional<UUID> result = result(subject);
        if (result.isPresent()) {
            return doors.room().behind(result.get()).map(trace -> new Found(subject, trace, times));
        }
        Optional<LotId> lot = subject.isEmpty()
                ? doors.room().lots(doors.clock().instant()).stream()
                        .findFirst()
                        .map(Lot::id)
                : Optional.of(new LotId(subject));
        return lot.map(id -> new Found(id.value(), doors.room().trace(id), times));
    }

    private static Optional<UUID> result(String subject) {
        try {
            return Optional.of(UUID.fromString(subject))
                    .filter(id -> id.toString().equalsIgnoreCase(subject));
        } catch (IllegalArgumentException noResult) {
            return Optional.empty();
        }
    }

    private void take(Optional<Found> found) {
        shown = found;
        uses = found.map(each -> each.trace().uses()).orElse(List.of());
        list.setEnabled(!uses.isEmpty());
        say(found.map(TraceRoom::words)
                .orElseGet(() -> StockUiWords.get(asked.getText().isBlank() ? "trace.first" : "trace.absent")));
        if (table.isEmpty() && found.isPresent()) {
            fill(found.get().times());
        } else {
            table.ifPresent(TableKit::reload);
        }
        found.filter(each -> asked.getText().isBlank()).ifPresent(each -> asked.setText(each.subject()));
        room.layout(true, true);
        if (found.isEmpty()) {
            context.ready();
        }
    }

    private static String words(Found found) {
        int count = found.trace().uses().size();
        return found.trace()
                .lot()
                .map(lot -> StockUiWords.get(
                        "trace.found",
                        lot.id(),
                        lot.kit().name(),
                        StockTerms.state(lot.state(), false),
                        lot.effective(),
                        count))
                .orElseGet(() -> StockUiWords.get("trace.unreceived", found.subject(), count));
    }

    private void fill(SiteTimes times) {
        TableKit<Use> made = new TableKit<>(room, context, new UseTable(times).of(() -> uses));
        Fit.grow(made.control());
        made.onLoaded(context::ready);
        made.onOpen(use -> {
            if (context.has("ledger")) {
                context.show("ledger", use.result().toString());
            } else {
                context.say(StockUiWords.get("trace.no-ledger"));
            }
        });
        table = Optional.of(made);
    }

    private void say(String text) {
        said.setText(text);
        room.layout(true, true);
    }

    private void choose() {
        String subject = shown.orElseThrow().subject().replaceAll("[^A-Za-z0-9-]", "_");
        context.files()
                .save(StockUiWords.get("trace.file", subject), "*.pdf", "*.csv", "*.xlsx", "*")
                .ifPresent(this::print);
    }

    /** Writes the recall list; the ending of the name chooses its form. */
    void print(Path file) {
        Found found = shown.orElseThrow();
        context.jobs()
                .run(
                        StockUiWords.get("trace.printing"),
                        progress -> {
                            doors.papers().recall(found.trace(), found.subject(), file);
                            return file;
                        },
                        written -> context.say(StockUiWords.get("report.done", written)),
                        failure -> context.say(String.valueOf(failure.getMessage())));
    }

    @Override
    public void focus() {
        asked.setFocus();
    }

    /** Shows a lot by its number, or a result by its id. */
    @Override
    public void show(String argument) {
        asked.setText(argument);
        reload();
    }
}
