package wickbench.stock.face;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.report.ReportPrinter;
import wickbench.stock.FridgeTrace;
import wickbench.stock.Fridges;
import wickbench.stock.Kit;
import wickbench.stock.Papers;
import wickbench.stock.Stockroom;
import wickbench.stock.Trace;

/** Reads and writes the files of the stock room. */
@Component
public final class HousePapers implements Papers {
    private final Stockroom room;
    private final Fridges fridges;
    private final List<ReportPrinter> printers;

    @Activate
    public HousePapers(
            @Reference Stockroom room,
            @Reference Fridges fridges,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ReportPrinter> printers) {
        this.room = room;
        this.fridges = fridges;
        this.printers = List.copyOf(printers);
    }

    @Override
    public Kit kit(Path file) {
        return KitFiles.read(file);
    }

    @Override
    public void report(Instant now, Path out) {
        PrintedFile.write(out, printers, new StockReport(room, fridges, now).report());
    }

    @Override
    public void recall(Trace trace, String subject, Path out) {
        new RecallList(room.zone(), printers).write(trace, subject, out);
    }

    @Override
    public void fridges(List<FridgeTrace> traces, Path out) {
        PrintedFile.write(out, printers, new FridgeReport(room.zone()).of(traces));
    }
}
