package wickbench.api.report;

import java.util.List;
import wickbench.api.journal.EntryRef;

/**
 * A report as data: what stands in it, not how it is printed.
 *
 * @param paper how much paper it may take
 * @param drawnFrom the entries that it rests on; the printer adds a checkpoint of each station among them
 */
public record Report(String title, List<Section> sections, Paper paper, List<EntryRef> drawnFrom) {

    /** How much paper a report may take. */
    public enum Paper {
        /** As many pages as it needs. */
        PAGES,
        /** One page, as a card to hang up; it is printed smaller where it must be, and on more where it could not be read. */
        ONE_PAGE
    }

    /** Makes a report that may take as many pages as it needs. */
    public Report(String title, List<Section> sections, List<EntryRef> drawnFrom) {
        this(title, sections, Paper.PAGES, drawnFrom);
    }

    public Report {
        sections = List.copyOf(sections);
        drawnFrom = List.copyOf(drawnFrom);
    }
}
