package wickbench.bench.evidence;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.WholeFile;
import wickbench.bench.evidence.Verifications.Verified;

/** Prints a method's bench card, and what shows that it works; reads the index, so never on the screen's thread. */
@Component(service = MethodPapers.class)
public final class MethodPapers {
    private final Methods methods;
    private final Verifications verifications;
    private final List<ReportPrinter> printers;

    @Activate
    public MethodPapers(
            @Reference Methods methods,
            @Reference Verifications verifications,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ReportPrinter> printers) {
        this.methods = methods;
        this.verifications = verifications;
        this.printers = List.copyOf(printers);
    }

    /**
     * Makes the bench card of the newest version.
     *
     * @throws BadInput when no method of that id was ever issued
     */
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

    /** Makes the report of all that shows that a method works, in any version, with plots. */
    public Report evidence(MethodId id) {
        Map<Verified, List<Shown>> all = new LinkedHashMap<>();
        verifications.of(id).forEach(each -> all.put(each, verifications.shown(each)));
        return new EvidencePaper(newest(id), all).report();
    }

    private Method newest(MethodId id) {
        return methods.versions(id).stream()
                .map(IssuedMethod::method)
                .reduce((older, newer) -> newer)
                .orElseThrow(() -> new BadInput(Complaint.of("ID", EvidenceWords.get("unknown", id))));
    }

    /**
     * Prints as PDF.
     *
     * @throws BadInput when the file is called otherwise, or cannot be written
     */
    public void print(Report report, Path file) {
        if (!file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            throw new BadInput(Complaint.of("--out", EvidenceWords.get("pdf-only", file.getFileName())));
        }
        ReportPrinter printer = printers.stream()
                .filter(each -> each.mediaType().equals(ReportPrinter.PDF))
                .findFirst()
                .orElseThrow(() -> new Refusal("method.no-printer", EvidenceWords.get("no-printer")));
        try {
            new WholeFile(file).write(bytes -> {
                printer.print(report, bytes);
                return true;
            });
        } catch (IOException e) {
            throw new BadInput(Complaint.of(file.toString(), EvidenceWords.get("unwritable", e.getMessage())));
        }
    }
}
