package wickbench.bench.ui;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.method.Methods.IssuedMethod;
import wickbench.api.person.Person;
import wickbench.bench.run.Run;
import wickbench.shell.KeyHint;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.EmptyState;
import wickbench.widgets.Fit;
import wickbench.widgets.Heading;

/** The open page: a run of strips, or a whole sheet. */
final class BenchPart implements PagePart {
    private final PageContext context;
    private final BenchDoors doors;
    private final Composite page;
    private final Composite stack;
    private final StackLayout layout = new StackLayout();
    private final RunFlow flow;
    private final SheetDesk sheet;

    /** What the page needs before anything can be entered. */
    private record Known(List<Person> people, List<IssuedMethod> methods, ZoneId zone, List<Run> runs) {}

    BenchPart(Composite parent, PageContext context, BenchDoors doors, Bell bell) {
        this.context = context;
        this.doors = doors;
        page = context.theme().controls().box(parent, 1);
        Heading heading =
                new Heading(page, context.theme(), BenchUiWords.get("bench.heading"), BenchUiWords.get("bench.line"));
        context.theme().controls().button(heading.actions(), BenchUiWords.get("sheet.open"), this::choose);
        ((GridLayout) heading.actions().getLayout()).numColumns = 1;
        stack = Fit.grow(new Composite(page, SWT.NONE));
        stack.setBackground(page.getBackground());
        stack.setLayout(layout);
        flow = new RunFlow(stack, context, doors, bell);
        sheet = new SheetDesk(stack, context, doors, () -> front(flow.control()));
        front(flow.control());
        load();
    }

    private void load() {
        context.jobs()
                .run(
                        BenchUiWords.get("bench.loading"),
                        progress -> new Known(
                                doors.persons().people().all(),
                                doors.methods().all().stream()
                                        .filter(method -> method.until().isEmpty())
                                        .toList(),
                                doors.zone(),
                                doors.runs().open()),
                        this::take);
    }

    private void take(Known known) {
        SiteClock clock = new SiteClock(doors.home().clock(), known.zone());
        flow.start(
                new Choices(
                        known.people(),
                        known.methods().stream().map(IssuedMethod::method).toList()),
                clock,
                known.runs());
        sheet.clock(clock);
        if (known.methods().isEmpty()) {
            front(nothingToRunBy());
        }
        context.ready();
    }

    private Control nothingToRunBy() {
        EmptyState empty = new EmptyState(
                stack,
                context.theme(),
                pen -> pen.box(5, 3, 14, 18, 2)
                        .line(8, 8, 16, 8)
                        .line(8, 12, 16, 12)
                        .line(8, 16, 13, 16),
                BenchUiWords.get("bench.empty.title"),
                BenchUiWords.get("bench.empty.text"));
        return context.has("methods")
                ? empty.offer(BenchUiWords.get("bench.empty.verb"), () -> context.show("methods"))
                : empty;
    }

    private void choose() {
        context.files()
                .open(BenchUiWords.get("sheet.choose"), "*.csv;*.txt;*.tsv", "*")
                .map(Path::toString)
                .ifPresent(this::show);
    }

    /** Goes to a stage of the run under way, to a strip of it as {@code strip:3}, or opens the sheet with this path. */
    @Override
    public void show(String argument) {
        if (flow.show(argument)) {
            front(flow.control());
            return;
        }
        front(sheet.control());
        sheet.open(Path.of(argument));
    }

    @Override
    public void focus() {
        if (layout.topControl == flow.control()) {
            flow.focus();
        }
    }

    @Override
    public List<KeyHint> keys() {
        return Stream.of("number", "heard", "back")
                .map(key -> new KeyHint(FlowWords.get("keys." + key + ".key"), FlowWords.get("keys." + key)))
                .toList();
    }

    @Override
    public Optional<Object> draft() {
        return flow.newRun().drafts().draft().map(Object.class::cast);
    }

    @Override
    public void restore(Object draft) {
        flow.newRun().drafts().restore((RunDraft) draft);
    }

    @Override
    public void closed() {
        flow.leave();
    }

    RunFlow flow() {
        return flow;
    }

    SheetDesk sheet() {
        return sheet;
    }

    private void front(Control control) {
        layout.topControl = control;
        stack.layout();
        if (control == flow.control()) {
            flow.focus();
        }
    }
}
