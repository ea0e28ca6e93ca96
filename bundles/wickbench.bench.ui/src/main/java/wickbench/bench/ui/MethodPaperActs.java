package wickbench.bench.ui;

import java.nio.file.Path;
import java.util.function.Function;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.report.Report;
import wickbench.bench.evidence.MethodPapers;
import wickbench.shell.PageContext;
import wickbench.widgets.Job;

/** Prints a method's bench card and what shows that it works. */
record MethodPaperActs(PageContext context, MethodPapers papers) {
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
        context.files().save(name, "*.pdf").ifPresent(then::apply);
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
