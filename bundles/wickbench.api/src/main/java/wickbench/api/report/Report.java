package wickbench.api.report;

import java.util.List;
import wickbench.api.chart.Chart;
import wickbench.api.journal.EntryRef;
import wickbench.api.method.Format;
import wickbench.api.reading.Strip;

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

    /** A part of a report. */
    public sealed interface Section {
        /** A heading. */
        record Heading(String text) implements Section {}

        /** A paragraph. */
        record Paragraph(String text) implements Section {}

        /** A table; every row has as many cells as the header. */
        record Table(List<String> header, List<List<String>> rows) implements Section {}

        /** A chart. */
        record Figure(Chart chart) implements Section {}

        /** A strip as it was read. */
        record StripFigure(Format format, Strip strip) implements Section {}
    }
}
