package wickbench.bench.ui;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.report.Report;
import wickbench.bench.evidence.MethodPapers;
import wickbench.shell.PageContext;
import wickbench.widgets.Job;

/** Prints a method's bench card and what shows that it works. */
record MethodPaperActs(PageContext context, MethodPapers papers, Shell window) {
    void card(Method method) {
        choose(
                method.ref().id() + "-card.pdf",
                file -> print(papers::card, method.ref().id(), file));
    }

    void evidence(Method method) {
        choose(
                method.ref().id() + "-evidence.pdf",
                file -> print(papers::evidence, method.ref().id(), file));
    }

    private void choose(String name, Function<Path, Job> then) {
        FileDialog dialog = new FileDialog(window, SWT.SAVE);
        dialog.setFilterExtensions(new String[] {"*.pdf"});
        dialog.setFileName(name);
        dialog.setOverwrite(true);
        Optional.ofNullable(dialog.open()).map(Path::of).ifPresent(then::apply);
    }

    Job print(Function<MethodId, Report> paper, MethodId id, Path file) {
        return context.jobs()
                .run(
                        BenchUiWords.get("paper.printing"),
                        progress -> {
                            papers.print(paper.apply(id), file);
                            return file;
                        },
                        written -> context.say(BenchUiWords.get("paper.printed", written)),
                        failure -> context.say(String.valueOf(failure.getMessage())));
    }
}
