package wickbench.ledger.ui;

import java.nio.file.Path;
import java.util.function.Supplier;
import org.eclipse.swt.widgets.Composite;
import wickbench.ledger.Filter;
import wickbench.ledger.papers.Packing;
import wickbench.ledger.papers.Packing.Packed;
import wickbench.ledger.papers.Packing.Wanted;
import wickbench.shell.PageContext;

/**
 * Prints reports, and packs what is shown for an auditor.
 *
 * @param print asks which report
 * @param shown what passes the filters
 */
record PaperButtons(PageContext context, Packing packing, Runnable print, Supplier<Filter> shown) {
    void into(Composite actions) {
        context.theme().controls().button(actions, LedgerUiWords.get("print.open"), print);
        context.theme()
                .controls()
                .button(
                        actions,
                        LedgerUiWords.get("pack.open"),
                        () -> context.files()
                                .save(LedgerUiWords.get("pack.file"), "*")
                                .ifPresent(this::pack));
    }

    /** Makes the pack in a new folder, under the name of who is at the desk. */
    void pack(Path folder) {
        Filter filter = shown.get();
        context.actor()
                .ifPresentOrElse(
                        by -> context.jobs()
                                .run(
                                        LedgerUiWords.get("pack.packing"),
                                        progress -> packing.pack(new Wanted(filter, false, folder), by, progress),
                                        this::packed,
                                        failure -> context.say(String.valueOf(failure.getMessage()))),
                        () -> context.say(LedgerUiWords.get("act.nobody")));
    }

    private void packed(Packed packed) {
        String done = LedgerUiWords.get("pack.done", packed.entries(), packed.folder(), packed.entry());
        context.say(
                packed.missing().isEmpty()
                        ? done
                        : done + " "
                                + LedgerUiWords.get(
                                        "pack.missing", packed.missing().size()));
    }
}
