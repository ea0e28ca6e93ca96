package wickbench.bench.ui;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Permission.Denied;
import wickbench.api.method.Method;
import wickbench.api.method.Methods.IssuedMethod;
import wickbench.api.person.PersonId;
import wickbench.bench.ui.MethodActs.Draft;
import wickbench.bench.ui.MethodDoors.Known;
import wickbench.bench.ui.editor.MethodEditor;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Fit;
import wickbench.widgets.Focus;
import wickbench.widgets.Heading;
import wickbench.widgets.Scroller;
import wickbench.widgets.TableKit;

/** The open page: the site's methods at the left; at the right the bench card of one, or of a file that may be issued. */
final class MethodsPart implements PagePart {
    private static final String VERSION = "version:";

    private final PageContext context;
    private final MethodDoors doors;
    private final MethodActs acts;
    private final Composite page;
    private final Heading heading;
    private final Composite body;
    private final MethodAside aside;
    private final MethodEditing editing;
    private final MethodList list;
    private Optional<String> wanted = Optional.empty();
    private Optional<Known> known = Optional.empty();
    /** A file that may be issued, or the editor, is shown, and stays until it is issued or left. */
    private boolean drafting;

    private boolean goOn;
    private boolean renewing;

    MethodsPart(Composite parent, PageContext context, MethodDoors doors) {
        this.context = context;
        this.doors = doors;
        acts = new MethodActs(context, doors, parent.getShell());
        page = context.theme().controls().box(parent, 1);
        heading = new Heading(
                page, context.theme(), BenchUiWords.get("methods.heading"), BenchUiWords.get("methods.line"));
        body = Fit.grow(context.theme().controls().box(page, 1));
        aside = new MethodAside(context, page, body);
        list = new MethodList(context, this::choose);
        editing = new MethodEditing(context, acts, this::load, this::issued);
        context.onActor(actor -> again());
        load();
    }

    private void load() {
        drafting = false;
        editing.close();
        Optional<PersonId> actor = context.actor();
        context.jobs().run(BenchUiWords.get("methods.reading"), progress -> doors.known(actor), this::take);
    }

    /** Who signs in while a method is written goes on writing. */
    private void again() {
        if (editing.editor().isEmpty()) {
            load();
        } else {
            Optional<PersonId> actor = context.actor();
            context.jobs().run(BenchUiWords.get("methods.reading"), progress -> doors.known(actor), now -> {
                known = Optional.of(now);
                write();
            });
        }
    }

    private void take(Known now) {
        known = Optional.of(now);
        list.clear();
        aside.clear();
        MethodAside.empty(heading.actions());
        if (goOn) {
            goOn = false;
            write();
        } else {
            buttons(now);
            show(now);
        }
        page.layout(true, true);
        if (renewing) {
            goThere(now);
        }
    }

    private void buttons(Known now) {
        ((GridLayout) heading.actions().getLayout()).numColumns = 2;
        Button write = context.theme().controls().button(heading.actions(), editing.words(), this::write);
        Button issue = context.theme().controls().button(heading.actions(), BenchUiWords.get("issue.open"), this::open);
        if (now.rights().issue() instanceof Denied denied) {
            write.setToolTipText(denied.text());
            issue.setToolTipText(denied.text());
        }
    }

    private void show(Known now) {
        if (now.methods().isEmpty()) {
            list.nothingYet(body, editing.words(), this::write);
            context.ready();
        } else {
            list.fill(body, aside, now.methods(), wanted);
        }
    }

    /** Opens the editor. */
    void write() {
        writing(room -> editing.open(room, known.orElseThrow()));
    }

    private void renew(Method method) {
        writing(room -> editing.renew(room, known.orElseThrow(), method));
    }

    private void writing(Consumer<Composite> start) {
        drafting = true;
        list.clear();
        MethodAside.empty(heading.actions());
        start.accept(aside.clear());
        page.layout(true, true);
        editing.editor().ifPresent(MethodEditor::focus);
        context.ready();
    }

    private void open() {
        acts.choose(this::show);
    }

    /** Shows a file's method before it is issued. */
    void show(Draft draft) {
        drafting = true;
        Known now = known.orElseThrow();
        aside.fill(content -> new MethodDraft(content, context, card(content))
                .fill(draft, now.rights().issue(), this::issue, this::load));
    }

    private void issue(Method method) {
        acts.issue(known.orElseThrow(), method, () -> issued(method));
    }

    private void issued(Method method) {
        wanted = Optional.of(method.ref().id().value());
        load();
    }

    private void choose(IssuedMethod row) {
        drafting = false;
        wanted = Optional.of(MethodList.id(row));
        new MethodDetail(context, doors, acts, aside, known.orElseThrow(), this::renew, this::load).show(row);
    }

    private MethodCard card(Composite content) {
        return new MethodCard(content, context.theme(), known.orElseThrow());
    }

    /** Whether a method is being written; what stands in its fields is kept already. */
    @Override
    public Optional<Object> draft() {
        return editing.editor().map(open -> Boolean.TRUE);
    }

    @Override
    public void restore(Object draft) {
        goOn = true;
    }

    /** Shows the method with this id, or starts its next version: {@code version:milk-rinse}. */
    @Override
    public void show(String argument) {
        boolean next = argument.startsWith(VERSION);
        wanted = Optional.of(next ? argument.substring(VERSION.length()) : argument);
        renewing = next;
        known.filter(now -> !drafting).ifPresent(this::goThere);
    }

    /** Goes to what was asked for, once the methods are known. */
    private void goThere(Known now) {
        Optional<IssuedMethod> row = wanted.flatMap(id -> MethodList.find(now.methods(), id));
        if (renewing) {
            renewing = false;
            row.ifPresent(each -> renew(each.method()));
        } else {
            row.ifPresent(list::select);
        }
    }

    @Override
    public void newsCame() {
        Optional<PersonId> actor = context.actor();
        context.jobs().run(BenchUiWords.get("methods.reading"), progress -> doors.known(actor), now -> {
            if (!drafting && !known.equals(Optional.of(now))) {
                boolean here = Focus.within(body);
                take(now);
                if (here) {
                    focus();
                }
            }
        });
    }

    @Override
    public void focus() {
        list.table().ifPresent(TableKit::focus);
        editing.editor().ifPresent(MethodEditor::focus);
    }

    Optional<TableKit<IssuedMethod>> table() {
        return list.table();
    }

    Optional<Scroller> side() {
        return aside.scroller();
    }

    Optional<MethodEditor> editor() {
        return editing.editor();
    }

    MethodActs acts() {
        return acts;
    }
}
