package wickbench.bench.verify;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.journal.EntryRef;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.Methods;
import wickbench.api.method.Methods.IssuedMethod;
import wickbench.api.report.PrintedReport;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.bench.evidence.MethodPapers;
import wickbench.bench.evidence.Shown;
import wickbench.bench.evidence.Verifications;
import wickbench.bench.evidence.Verifications.Verified;

/** Makes and prints a method's bench card, and what shows that it works. */
@Component
public final class PaperDesk implements MethodPapers {
    private final Methods methods;
    private final Verifications verifications;
    private final List<ReportPrinter> printers;

    @Activate
    public PaperDesk(
            @Reference Methods methods,
            @Reference Verifications verifications,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ReportPrinter> printers) {
        this.methods = methods;
        this.verifications = verifications;
        this.printers = List.copyOf(printers);
    }

    @Override
    public Report card(MethodId id) {
        Method method = newest(id);
        List<Verified> verified = verifications.of(id).stream()
                .filter(each -> each.what().method().equals(method.ref()))
                .toList();
        List<Shown> shown = verified.stream()
                .filter(each -> each.ended().isEmpty())
                .flatMap(each -> verifications.shown(each).stream())
                .toList();
        List<EntryRef> drawnFrom =
                new ArrayList<>(verified.stream().map(Verified::entry).toList());
        shown.forEach(each -> drawnFrom.add(each.entry()));
        return new BenchCard(method, verified, shown, drawnFrom).report();
    }

    @Override
    public Report evidence(MethodId id) {
        Map<Verified, List<Shown>> all = new LinkedHashMap<>();
        verifications.of(id).forEach(each -> all.put(each, verifications.shown(each)));
        return new EvidencePaper(newest(id), all).report();
    }

    private Method newest(MethodId id) {
        return methods.versions(id).stream()
                .map(IssuedMethod::method)
                .reduce((older, newer) -> newer)
                .orElseThrow(() -> new BadInput(Complaint.of("ID", VerifyWords.get("unknown", id))));
    }

    @Override
    public void print(Report report, Path file) {
        if (!PrintedReport.form(file).equals(Optional.of(ReportPrinter.PDF))) {
            throw new BadInput(Complaint.of("--out", VerifyWords.get("pdf-only", file.getFileName())));
        }
        ReportPrinter printer = PrintedReport.printer(ReportPrinter.PDF, printers)
                .orElseThrow(() -> new Refusal("method.no-printer", VerifyWords.get("no-printer")));
        try {
            new PrintedReport(report, file).by(printer);
        } catch (IOException e) {
            throw new BadInput(Complaint.of(file.toString(), VerifyWords.get("unwritable", e.getMessage())));
        }
    }
}
