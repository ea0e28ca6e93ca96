package wickbench.api.report;

import java.util.List;
import wickbench.api.journal.EntryRef;

/**
 * A report as data: what stands in it, not how it is printed.
 *
 * @param drawnFrom the entries that it rests on; the printer adds a checkpoint of each station among them
 */
public record Report(String title, List<Section> sections, List<EntryRef> drawnFrom) {
    public Report {
        sections = List.copyOf(sections);
        drawnFrom = List.copyOf(drawnFrom);
    }
}
