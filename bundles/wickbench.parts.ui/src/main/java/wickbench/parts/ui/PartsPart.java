package wickbench.parts.ui;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import wickbench.api.authority.Permission.Denied;
import wickbench.api.part.PartSet;
import wickbench.api.part.Standing;
import wickbench.api.person.PersonId;
import wickbench.parts.ui.PartsDoors.Known;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Fit;
import wickbench.widgets.Heading;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Scroller;
import wickbench.widgets.TableKit;
import wickbench.widgets.Type;

/** The open page: the table of sets above with what can be done with the chosen one, how the program is below. */
final class PartsPart implements PagePart {
    private static final String GROUND = "base";

    private final PageContext context;
    private final PartsDoors doors;
    private final PartActs acts;
    private final Composite page;
    private final Composite said;
    private final Composite top;
    private final Scroller below;
    private final Button file;
    private Optional<Known> known = Optional.empty();
    private Optional<TableKit<PartSet>> table = Optional.empty();
    private Button act;
    private Label why;
    private String chosen = "";

    PartsPart(Composite parent, PageContext context, PartsDoors doors) {
        this.context = context;
        this.doors = doors;
        acts = new PartActs(context, doors, new Told());
        page = context.theme().controls().box(parent, 1);
        Heading heading =
                new Heading(page, context.theme(), PartsUiWords.get("page.heading"), PartsUiWords.get("page.line"));
        ((GridLayout) heading.actions().getLayout()).numColumns = 2;
        context.theme().controls().button(heading.actions(), PartsUiWords.get("verify.act"), acts::verify);
        file = context.theme()
                .controls()
                .button(
                        heading.actions(),
                        PartsUiWords.get("add.act"),
                        () -> acts.add(page.getShell(), known.orElseThrow()));
        file.setEnabled(false);
        said = Fit.wide(context.theme().controls().box(page, 1));
        silence();
        SashForm sash = Fit.grow(new SashForm(page, SWT.VERTICAL));
        sash.setBackground(page.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        top = context.theme().controls().box(sash, 1);
        below = new Scroller(sash, context.theme());
        sash.setWeights(52, 48);
        context.onActor(actor -> load());
        load();
    }

    private void load() {
        Optional<PersonId> actor = context.actor();
        context.jobs().run(PartsUiWords.get("page.reading"), progress -> doors.known(actor), this::take);
    }

    /** Another program may have added or removed; a table that stays the same is left alone. */
    @Override
    public void newsCame() {
        Optional<PersonId> actor = context.actor();
        context.jobs().run(PartsUiWords.get("page.reading"), progress -> doors.known(actor), now -> {
            if (!known.map(Known::sets).equals(Optional.of(now.sets()))) {
                take(now);
            }
        });
    }

    private void take(Known now) {
        known = Optional.of(now);
        file.setEnabled(now.change().allowed());
        empty(top);
        empty(below.content());
        TableKit<PartSet> kit = new TableKit<>(top, context, PartsTable.of(now.sets()));
        Fit.grow(kit.control());
        Composite row = Fit.wide(context.theme().controls().box(top, 2));
        act = context.theme().controls().button(row, PartsUiWords.get("remove.act"), this::press);
        why = context.theme().controls().text(row, Type.BODY, "");
        why.setForeground(context.theme().color(context.theme().palette().quiet()));
        table = Optional.of(kit);
        kit.onSelect(rows -> rows.stream().findFirst().ifPresent(this::choose));
        kit.onLoaded(() -> selectAgain(kit));
        new HealthPanel(below.content(), context).fill(now.health(), this::load);
        page.layout(true, true);
        below.measure();
    }

    private void selectAgain(TableKit<PartSet> kit) {
        if (kit.selected().isEmpty()) {
            kit.rows().stream()
                    .filter(set -> set.name().equals(chosen))
                    .findFirst()
                    .or(() -> kit.rows().stream().findFirst())
                    .ifPresent(kit::select);
        }
        context.ready();
    }

    private void choose(PartSet set) {
        chosen = set.name();
        boolean there = set.standing() != Standing.AT_HAND;
        act.setText(PartsUiWords.get(there ? "remove.act" : "add-held.act"));
        String refused = refused(set);
        act.setEnabled(refused.isEmpty());
        String line = refused.isEmpty() ? PartsUiWords.get(there ? "remove.line" : "add-held.line") : refused;
        why.setText(PartsUiWords.get("chosen", PartsTable.brings(set), line));
        top.layout(true, true);
    }

    /** Disabled rather than hidden, with the reason beside it; the service would say the same. */
    private String refused(PartSet set) {
        if (set.name().equals(GROUND)) {
            return PartsUiWords.get("remove.ground");
        }
        if (set.brings().isWordsOnly()) {
            return PartsUiWords.get("remove.language");
        }
        Optional<PartSet> leaning = known.orElseThrow().sets().stream()
                .filter(other -> set.standing().runs()
                        && other.standing().runs()
                        && other.requires().contains(set.name()))
                .findFirst();
        return leaning.map(other -> PartsUiWords.get("remove.needed", other.title()))
                .orElseGet(() -> known.orElseThrow().change() instanceof Denied denied ? denied.text() : "");
    }

    private void press() {
        Known now = known.orElseThrow();
        now.sets().stream().filter(set -> set.name().equals(chosen)).findFirst().ifPresent(set -> {
            if (set.standing() == Standing.AT_HAND) {
                acts.add(page.getShell(), now, set);
            } else {
                acts.remove(page.getShell(), now, set);
            }
        });
    }

    private void silence() {
        empty(said);
        ((GridData) said.getLayoutData()).exclude = true;
        said.setVisible(false);
    }

    private void say(Meaning meaning, String text) {
        empty(said);
        Fit.wide(new Note(said, context.theme(), meaning, text));
        ((GridData) said.getLayoutData()).exclude = false;
        said.setVisible(true);
        page.layout(true, true);
    }

    private final class Told implements PartActs.Outcome {
        @Override
        public void seen(String text) {
            say(Meaning.CALM, text);
        }

        @Override
        public void changed(String text) {
            silence();
            context.say(text);
            load();
        }

        @Override
        public void failed(Exception failure) {
            say(Meaning.ALARM, String.valueOf(failure.getMessage()));
        }
    }

    private static void empty(Composite box) {
        for (Control old : List.of(box.getChildren())) {
            old.dispose();
        }
    }

    @Override
    public void focus() {
        table.ifPresent(TableKit::focus);
    }

    /** Chooses the set of this name. */
    @Override
    public void show(String argument) {
        chosen = argument;
        table.ifPresent(kit -> kit.rows().stream()
                .filter(set -> set.name().equals(argument))
                .findFirst()
                .ifPresent(kit::select));
    }

    /** Returns everything of the page. */
    Composite page() {
        return page;
    }
}
