package wickbench.report.result;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.check.Refusal;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;
import wickbench.api.person.People;
import wickbench.api.profile.SiteFacts;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.ReportSource;
import wickbench.api.report.ReportSource.Of;
import wickbench.api.report.ReportSource.Wanted;
import wickbench.report.ReportWords;

/** {@code report}: prints a single result, or what the ledger makes of many. */
@Component(property = CommandSet.NAME + "=report")
public final class ReportCommand implements CommandSet {
    private final Journal journal;
    private final SiteFacts site;
    private final List<ReportPrinter> printers;
    private final Names names;
    private final Optional<ReportSource> source;

    @Activate
    public ReportCommand(
            @Reference Journal journal,
            @Reference SiteFacts site,
            @Reference(cardinality = ReferenceCardinality.AT_LEAST_ONE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ReportPrinter> printers,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<People> people,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<ReportSource> source) {
        this.journal = journal;
        this.site = site;
        this.printers = List.copyOf(printers);
        this.source = source;
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
            new ReportFile(printers).write(report, out);
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

        @Command(name = "day")
        int day(
                @Parameters(paramLabel = "DATE") String day,
                @Option(names = "--out", required = true, paramLabel = "FILE") Path out) {
            return many(Of.DAY, day, Optional.empty(), Optional.empty(), out);
        }

        @Command(name = "month")
        int month(
                @Parameters(paramLabel = "MONTH") String month,
                @Option(names = "--out", required = true, paramLabel = "FILE") Path out) {
            return many(Of.MONTH, month, Optional.empty(), Optional.empty(), out);
        }

        @Command(name = "line")
        int line(
                @Parameters(paramLabel = "LINE") String line,
                @Option(names = "--from", paramLabel = "DATE") Optional<LocalDate> from,
                @Option(names = "--to", paramLabel = "DATE") Optional<LocalDate> to,
                @Option(names = "--out", required = true, paramLabel = "FILE") Path out) {
            return many(Of.LINE, line, from, to, out);
        }

        @Command(name = "batch")
        int batch(
                @Parameters(paramLabel = "BATCH") String batch,
                @Option(names = "--out", required = true, paramLabel = "FILE") Path out) {
            return many(Of.BATCH, batch, Optional.empty(), Optional.empty(), out);
        }

        private int many(Of of, String name, Optional<LocalDate> from, Optional<LocalDate> to, Path out) {
            ReportSource maker =
                    source.orElseThrow(() -> new Refusal("report.no-ledger", ReportWords.get("many.no-ledger")));
            Report report = maker.report(new Wanted(of, name, from, to));
            new ReportFile(printers).write(report, out);
            if (terminal.json()) {
                terminal.json(Json.object()
                        .with("of", of.code())
                        .with("name", name)
                        .with("entries", report.drawnFrom().size())
                        .with("file", out.toString()));
            } else {
                terminal.line(ReportWords.get(
                        "many.printed", report.title(), report.drawnFrom().size(), out));
            }
            return 0;
        }
    }
}
