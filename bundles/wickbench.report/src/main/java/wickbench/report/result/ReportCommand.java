package wickbench.report.result;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;
import wickbench.api.person.People;
import wickbench.api.profile.SiteFacts;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.WholeFile;
import wickbench.report.ReportWords;

/** {@code report}: prints a single result. */
@Component(property = CommandSet.NAME + "=report")
public final class ReportCommand implements CommandSet {
    private final Journal journal;
    private final SiteFacts site;
    private final ReportPrinter pdf;
    private final Names names;

    @Activate
    public ReportCommand(
            @Reference Journal journal,
            @Reference SiteFacts site,
            @Reference(target = "(" + ReportPrinter.MEDIA_TYPE + "=" + ReportPrinter.PDF + ")") ReportPrinter pdf,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<People> people) {
        this.journal = journal;
        this.site = site;
        this.pdf = pdf;
        this.names = new Names(List.copyOf(people));
    }

    @Override
    public Object commands(Terminal terminal) {
        return new Group(terminal);
    }

    @Command(name = "report", synopsisSubcommandLabel = "COMMAND")
    private final class Group {
        private final Terminal terminal;

        Group(Terminal terminal) {
            this.terminal = terminal;
        }

        @Command(name = "result")
        int result(
                @Parameters(paramLabel = "ID") String id,
                @Option(names = "--out", required = true, paramLabel = "FILE.pdf") Path out) {
            ResultFile file = new ResultSearch(journal).find(id);
            Report report = new ResultReport(file, site.now(), names).report();
            write(report, out);
            if (terminal.json()) {
                terminal.json(Json.object()
                        .with("entry", file.first().entry().ref().toString())
                        .with("file", out.toString()));
            } else {
                terminal.line(
                        ReportWords.get("result.printed", file.first().entry().ref(), out));
            }
            return 0;
        }
    }

    private void write(Report report, Path file) {
        try {
            new WholeFile(file).write(bytes -> {
                pdf.print(report, bytes);
                return true;
            });
        } catch (IOException e) {
            throw new BadInput(Complaint.of(file.toString(), ReportWords.get("file.unwritable", reason(e))));
        }
    }

    /** Java's own message of an absent folder only repeats the file's name. */
    private static String reason(IOException failure) {
        if (failure instanceof NoSuchFileException) {
            return ReportWords.get("file.no-folder");
        }
        return failure instanceof AccessDeniedException
                ? ReportWords.get("file.denied")
                : String.valueOf(failure.getMessage());
    }
}
