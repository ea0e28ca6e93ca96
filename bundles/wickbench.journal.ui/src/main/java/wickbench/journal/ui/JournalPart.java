package wickbench.journal.ui;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Fit;
import wickbench.widgets.Heading;
import wickbench.widgets.Scroller;

/** The open page: what is here and whether it holds at the left, what is elsewhere at the right. */
final class JournalPart implements PagePart {
    private final PageContext context;
    private final JournalDoors doors;
    private final Composite page;
    private final Scroller here;
    private final Scroller elsewhere;
    private Optional<ComparePanel> compare = Optional.empty();
    private String draft = "";
    /** What is shown that hangs on who has the desk, or on other stations. */
    private ClashDoors.Known clashes = ClashDoors.Known.NONE;

    JournalPart(Composite parent, PageContext context, JournalDoors doors) {
        this.context = context;
        this.doors = doors;
        page = context.theme().controls().box(parent, 1);
        new Heading(page, context.theme(), JournalUiWords.get("page.heading"), JournalUiWords.get("page.line"));
        SashForm sash = Fit.grow(new SashForm(page, SWT.HORIZONTAL));
        sash.setBackground(page.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(2));
        here = new Scroller(sash, context.theme());
        elsewhere = new Scroller(sash, context.theme());
        context.onActor(actor -> {
            if (!clashes.open().isEmpty()) {
                load();
            }
        });
        load();
    }

    private void load() {
        Optional<PersonId> actor = context.actor();
        context.jobs().run(JournalUiWords.get("page.reading"), progress -> doors.known(actor), this::take);
    }

    /** Shows clashes as they come and go; all else of the page stays, with what was verified and what is half typed. */
    @Override
    public void newsCame() {
        Optional<PersonId> actor = context.actor();
        context.jobs().run(JournalUiWords.get("page.reading"), progress -> doors.known(actor), known -> {
            if (!known.clashes().equals(clashes)) {
                take(known);
            }
        });
    }

    private void take(JournalDoors.Known known) {
        clashes = known.clashes();
        compare.ifPresent(panel -> draft = panel.draft());
        here(empty(here), known);
        elsewhere(empty(elsewhere), known);
        page.layout(true, true);
        here.measure();
        elsewhere.measure();
        context.ready();
    }

    private Composite empty(Scroller scroller) {
        for (Control old : scroller.content().getChildren()) {
            old.dispose();
        }
        ((GridLayout) scroller.content().getLayout()).verticalSpacing =
                context.theme().metrics().grid(2);
        return scroller.content();
    }

    private void here(Composite column, JournalDoors.Known known) {
        if (!known.clashes().open().isEmpty()) {
            new ClashPanel(column, context, doors, here::measure).fill(known, this::load);
        }
        new StationPanel(column, context, doors, here::measure).fill(known);
        new StationsPanel(column, context, doors, here::measure).fill(known, this::load);
        new IndexPanel(column, context, doors, here::measure).fill(known, this::load);
    }

    private void elsewhere(Composite column, JournalDoors.Known known) {
        ComparePanel panel = new ComparePanel(column, context, doors, elsewhere::measure);
        panel.restore(draft);
        compare = Optional.of(panel);
        new BackupPanel(column, context, doors, elsewhere::measure).fill(known, this::load);
        new RestorePanel(column, context, doors, elsewhere::measure);
    }

    /** Returns what was typed into the field for a checkpoint. */
    @Override
    public Optional<Object> draft() {
        return compare.map(ComparePanel::draft);
    }

    @Override
    public void restore(Object kept) {
        draft = String.valueOf(kept);
        compare.ifPresent(panel -> panel.restore(draft));
    }

    @Override
    public void focus() {
        here.content().setFocus();
    }

    /** Returns everything of the page. */
    Composite page() {
        return page;
    }
}
