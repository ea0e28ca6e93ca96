package wickbench.people.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import wickbench.api.person.PersonId;
import wickbench.shell.ForgottenPassphrase;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Fit;
import wickbench.widgets.Focus;
import wickbench.widgets.Heading;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Scroller;
import wickbench.widgets.TableKit;

/** The open page: everyone at the left, one person or the form for a new one at the right; the very first start alone. */
final class PeoplePart implements PagePart {
    private final PageContext context;
    private final PeopleDoors doors;
    private final Composite page;
    private final Composite body;
    private final Heading heading;
    private final HouseForms forms;
    private Optional<Known> known = Optional.empty();
    private List<PersonRow> everyone = List.of();
    private Optional<TableKit<PersonRow>> table = Optional.empty();
    private Optional<Scroller> side = Optional.empty();
    private Optional<String> wanted = Optional.empty();
    private boolean forgotten;

    private record Known(List<PersonRow> everyone, boolean asked, boolean founded, boolean sealed) {}

    PeoplePart(Composite parent, PageContext context, PeopleDoors doors) {
        this.context = context;
        this.doors = doors;
        page = context.theme().controls().box(parent, 1);
        heading = new Heading(page, context.theme(), PeopleUiWords.get("page.heading"), PeopleUiWords.get("page.line"));
        body = Fit.grow(context.theme().controls().box(page, 1));
        forms = new HouseForms(context, doors, new SideOfPage(), this::load);
        context.onActor(actor -> load());
        load();
    }

    private void load() {
        forgotten = false;
        context.jobs().run(PeopleUiWords.get("page.reading"), progress -> read(), this::take);
    }

    private Known read() {
        return new Known(
                doors.rows(),
                doors.signIn().asked(),
                doors.journal().founding().isPresent(),
                doors.recovery().sealed());
    }

    /** Takes up what others changed, unless a form is half filled, which would be lost. */
    @Override
    public void newsCame() {
        context.jobs().run(PeopleUiWords.get("page.reading"), progress -> read(), now -> {
            if (!Optional.of(now).equals(known) && !halfTyped(body)) {
                boolean here = Focus.within(body);
                forgotten = false;
                take(now);
                if (here) {
                    focus();
                }
            }
        });
    }

    /** A field is filled, or a box of the form in hand ticked or not: whoever has the focus there is at it. */
    private static boolean halfTyped(Composite box) {
        for (Control child : box.getChildren()) {
            boolean typed = child instanceof Text text
                    && text.getEditable()
                    && !text.getText().isEmpty();
            boolean ticking =
                    child instanceof Button button && (button.getStyle() & SWT.CHECK) != 0 && button.isFocusControl();
            if (typed || ticking || child instanceof Composite inner && halfTyped(inner)) {
                return true;
            }
        }
        return false;
    }

    private void take(Known known) {
        this.known = Optional.of(known);
        everyone = known.everyone();
        empty(body);
        empty(heading.actions());
        if (everyone.isEmpty()) {
            firstStart(known.founded());
        } else {
            list(known);
        }
        page.layout(true, true);
    }

    private void firstStart(boolean founded) {
        Scroller scroller = new Scroller(body, context.theme());
        Fit.grow(scroller.control());
        new FirstStart(doors).fill(scroller.content(), context, founded, scroller::measure, this::load);
        scroller.measure();
        context.ready();
    }

    private void list(Known known) {
        ((GridLayout) heading.actions().getLayout()).numColumns = known.asked() ? 2 : 1;
        if (known.asked()) {
            context.theme().controls().button(heading.actions(), PeopleUiWords.get("envelope.open"), forms::envelope);
        }
        context.theme().controls().button(heading.actions(), PeopleUiWords.get("enrol.open"), forms::enrol);
        if (!known.asked()) {
            Fit.wide(new Note(body, context.theme(), Meaning.CAUTION, PeopleUiWords.get("page.open")));
        } else if (!known.sealed()) {
            Fit.wide(new Note(body, context.theme(), Meaning.CAUTION, PeopleUiWords.get("page.unsealed")));
        }
        SashForm sash = Fit.grow(new SashForm(body, SWT.HORIZONTAL));
        sash.setBackground(page.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        TableKit<PersonRow> kit = new TableKit<>(sash, context, PeopleTable.of(everyone));
        side = Optional.of(new Scroller(sash, context.theme()));
        sash.setWeights(54, 46);
        table = Optional.of(kit);
        kit.onSelect(rows -> rows.stream().findFirst().ifPresent(this::choose));
        kit.onLoaded(() -> selectFirst(kit));
    }

    private void selectFirst(TableKit<PersonRow> kit) {
        Optional<PersonRow> asked = wanted.flatMap(id -> kit.rows().stream()
                .filter(row -> row.person().id().value().equals(id))
                .findFirst());
        if (kit.selected().isEmpty()) {
            asked.or(() -> kit.rows().stream().findFirst()).ifPresent(kit::select);
        }
    }

    private void choose(PersonRow row) {
        Optional<String> chosen = Optional.of(row.person().id().value());
        forgotten = forgotten && chosen.equals(wanted);
        wanted = chosen;
        if (forgotten) {
            forms.recover(row, everyone);
            return;
        }
        Optional<PersonId> actor = context.actor();
        if (actor.isEmpty()) {
            aside(content -> forms.nobody(content, row, everyone));
            return;
        }
        context.jobs()
                .run(
                        PeopleUiWords.get("page.reading"),
                        progress -> PersonCard.Facts.of(doors, row, actor.get(), everyone),
                        facts ->
                                aside(content -> new PersonCard(context, doors, side.orElseThrow()::measure, this::load)
                                        .fill(content, facts)));
    }

    private final class SideOfPage implements HouseForms.Side {
        @Override
        public void fill(Consumer<Composite> content) {
            aside(content);
        }

        @Override
        public void measure() {
            side.orElseThrow().measure();
        }
    }

    private void aside(Consumer<Composite> fill) {
        Scroller scroller = side.orElseThrow();
        empty(scroller.content());
        fill.accept(scroller.content());
        scroller.measure();
        context.ready();
    }

    private static void empty(Composite box) {
        for (Control old : box.getChildren()) {
            old.dispose();
        }
    }

    /** Shows the person with this id, or lets one who forgot their passphrase come back. */
    @Override
    public void show(String argument) {
        Optional<String> lost =
                ForgottenPassphrase.of(argument).map(asked -> asked.who().value());
        String id = lost.orElse(argument);
        forgotten = lost.isPresent();
        wanted = Optional.of(id);
        table.ifPresent(kit -> kit.rows().stream()
                .filter(row -> row.person().id().value().equals(id))
                .findFirst()
                .ifPresent(kit::select));
    }

    @Override
    public void focus() {
        table.ifPresent(TableKit::focus);
    }

    /** Returns what stands below the heading. */
    Composite body() {
        return body;
    }
}
