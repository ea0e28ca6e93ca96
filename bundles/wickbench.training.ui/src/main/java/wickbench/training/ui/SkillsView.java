package wickbench.training.ui;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.method.MethodId;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.training.Matrix;
import wickbench.training.PersonRecord;
import wickbench.widgets.EmptyState;
import wickbench.widgets.Fit;
import wickbench.widgets.Scroller;
import wickbench.widgets.TableKit;

/** The skills matrix, people by methods, and one person's file beside it. */
final class SkillsView implements View {

    private final PageContext context;
    private final TrainingDoors doors;
    private final Composite room;
    private Optional<TableKit<Person>> table = Optional.empty();
    private Optional<Scroller> side = Optional.empty();
    private Optional<TrainingDoors.Known> known = Optional.empty();
    private Optional<String> wanted = Optional.empty();
    private Optional<MethodId> method = Optional.empty();
    private Optional<PersonFile> file = Optional.empty();

    SkillsView(Composite parent, PageContext context, TrainingDoors doors) {
        this.context = context;
        this.doors = doors;
        room = Fit.grow(context.theme().controls().box(parent, 1));
        refresh();
    }

    @Override
    public Composite control() {
        return room;
    }

    @Override
    public void refresh() {
        Optional<PersonId> actor = context.actor();
        context.jobs().run(TrainingUiWords.get("skills.reading"), progress -> doors.known(actor), this::take);
    }

    private void take(TrainingDoors.Known now) {
        if (room.isDisposed()) {
            return;
        }
        known = Optional.of(now);
        clear(room);
        table = Optional.empty();
        file = Optional.empty();
        Matrix matrix = now.matrix();
        if (matrix.people().isEmpty() || matrix.methods().isEmpty()) {
            empty(matrix);
        } else {
            fill(now);
        }
        room.layout(true, true);
    }

    private void empty(Matrix matrix) {
        boolean nobody = matrix.people().isEmpty();
        EmptyState state = Fit.grow(new EmptyState(
                room,
                context.theme(),
                pen -> pen.circle(12, 8, 4).line(4, 21, 5, 16, 12, 14, 19, 16, 20, 21),
                TrainingUiWords.get(nobody ? "skills.nobody" : "skills.no-method"),
                TrainingUiWords.get(nobody ? "skills.nobody.line" : "skills.no-method.line")));
        String page = nobody ? "people" : "methods";
        if (context.has(page)) {
            state.offer(TrainingUiWords.get("skills.to." + page), () -> context.show(page));
        }
        context.ready();
    }

    private void fill(TrainingDoors.Known now) {
        SashForm sash = Fit.grow(new SashForm(room, SWT.HORIZONTAL));
        sash.setBackground(room.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        TableKit<Person> kit = new TableKit<>(sash, context, MatrixTable.of(now));
        side = Optional.of(new Scroller(sash, context.theme()));
        sash.setWeights(58, 42);
        table = Optional.of(kit);
        kit.onSelect(rows -> rows.stream().findFirst().ifPresent(this::choose));
        kit.onLoaded(() -> selectWanted(kit));
        kit.onCell(this::cell);
        method.ifPresent(each -> kit.cell(MatrixTable.column(each)));
    }

    /** Goes to another cell: the same person, another method. */
    private void cell(String column) {
        method = MatrixTable.method(column);
        method.ifPresent(of -> file.filter(
                        shown -> wanted.filter(shown.person().value()::equals).isPresent())
                .ifPresent(shown -> shown.show(of)));
    }

    private void selectWanted(TableKit<Person> kit) {
        if (kit.selected().isEmpty()) {
            wanted.flatMap(id -> kit.rows().stream()
                            .filter(row -> row.id().value().equals(id))
                            .findFirst())
                    .or(() -> kit.rows().stream().findFirst())
                    .ifPresent(kit::select);
        }
    }

    private void choose(Person person) {
        wanted = Optional.of(person.id().value());
        context.jobs()
                .run(
                        TrainingUiWords.get("skills.reading"),
                        progress -> {
                            PersonRecord record = doors.competences().person(person.id(), doors.now());
                            return new PersonFile.Known(record, doors.papers().timeLine(record));
                        },
                        this::aside);
    }

    private void aside(PersonFile.Known found) {
        Scroller scroller = side.orElseThrow();
        PersonId person = found.record().person();
        boolean current = wanted.filter(person.value()::equals).isPresent();
        if (scroller.control().isDisposed() || !current) {
            return;
        }
        clear(scroller.content());
        PersonFile shown =
                new PersonFile(context, doors, known.orElseThrow(), person, scroller::measure, this::refresh);
        shown.fill(scroller.content(), found, method);
        file = Optional.of(shown);
        scroller.measure();
        context.ready();
    }

    private static void clear(Composite box) {
        for (Control old : box.getChildren()) {
            old.dispose();
        }
    }

    /** Shows the person with this id. */
    @Override
    public void show(String person) {
        wanted = Optional.of(person);
        table.ifPresent(kit -> kit.rows().stream()
                .filter(row -> row.id().value().equals(person))
                .findFirst()
                .ifPresent(kit::select));
    }

    @Override
    public void focus() {
        table.ifPresent(TableKit::focus);
    }

    @Override
    public void actor() {
        refresh();
    }

    @Override
    public Optional<Object> draft() {
        return wanted.map(id -> id);
    }

    @Override
    public void restore(Object draft) {
        show((String) draft);
    }
}
