package wickbench.ledger.ui;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import wickbench.ledger.Filter;
import wickbench.ledger.papers.Packing;
import wickbench.ledger.papers.Packing.Packed;
import wickbench.ledger.papers.Packing.Wanted;
import wickbench.ledger.papers.Papers;
import wickbench.shell.PageContext;
import wickbench.widgets.Job;

/** Prints what is shown as a report, and packs it for an auditor. */
record PaperButtons(PageContext context, Papers papers, Packing packing, Supplier<Filter> shown) {
    void into(Composite actions) {
        context.theme()
                .controls()
                .button(
                        actions,
                        LedgerUiWords.get("print.open"),
                        () -> choose(
                                actions.getShell(),
                                LedgerUiWords.get("print.file"),
                                this::print,
                                "*.pdf",
                                "*.xlsx",
                                "*.jsonl"));
        context.theme()
                .controls()
                .button(
                        actions,
                        LedgerUiWords.get("pack.open"),
                        () -> choose(actions.getShell(), LedgerUiWords.get("pack.file"), this::pack, "*"));
    }

    private static void choose(Shell shell, String name, Consumer<Path> then, String... endings) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setFilterExtensions(endings);
        dialog.setFileName(name);
        dialog.setOverwrite(true);
        Optional.ofNullable(dialog.open()).map(Path::of).ifPresent(then);
    }

    Job print(Path file) {
        Filter filter = shown.get();
        return context.jobs()
                .run(
                        LedgerUiWords.get("print.printing"),
                        progress -> {
                            papers.print(papers.results(filter), file);
                            return file;
                        },
                        written -> context.say(LedgerUiWords.get("print.done", written)),
                        failure -> context.say(String.valueOf(failure.getMessage())));
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
