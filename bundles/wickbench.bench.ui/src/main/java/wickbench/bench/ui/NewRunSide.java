package wickbench.bench.ui;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import wickbench.shell.PageContext;
import wickbench.widgets.Fit;

/** Beside the form of a new run: its strips so far, and the oldest of what is owed at this site. */
final class NewRunSide {
    private static final int WIDTH = 340;
    private static final int NAMED = 2;

    private final StripEntry entry;
    private final NewStrips strips;
    private final OwedList owed;

    /**
     * @param entry where strips are entered
     * @param looked hears that another list of what is owed is shown
     * @param all leads to all of it
     */
    NewRunSide(
            Composite parent, PageContext context, BenchDoors doors, StripEntry entry, Runnable looked, Runnable all) {
        this.entry = entry;
        Composite side = context.theme().controls().box(parent, 1);
        GridData data = new GridData(SWT.FILL, SWT.FILL, false, true);
        data.widthHint = context.theme().px(WIDTH);
        side.setLayoutData(data);
        StripList list = new StripList(side, context.theme());
        Fit.grow(list.control());
        strips = new NewStrips(list, entry::drawn);
        owed = new OwedList(side, context, doors, NAMED, looked);
        context.theme().controls().button(side, FlowWords.get("owed.all"), all);
    }

    /** Looks what is owed; a strip for it needs the methods in force, so nothing is asked before they are known. */
    void look() {
        if (entry.known()) {
            owed.look();
        }
    }

    NewStrips strips() {
        return strips;
    }

    OwedList owed() {
        return owed;
    }
}
