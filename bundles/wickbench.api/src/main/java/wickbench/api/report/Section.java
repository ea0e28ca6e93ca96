package wickbench.api.report;

import java.util.List;
import java.util.Map;
import wickbench.api.chart.Chart;
import wickbench.api.method.LineRole;
import wickbench.api.reading.Strip;

/** A part of a report. */
public sealed interface Section {

    /** A heading. */
    record Heading(String text) implements Section {}

    /** A paragraph; its line breaks are kept. */
    record Paragraph(String text) implements Section {}

    /** Names with their values, such as times and quantities. */
    record Facts(List<Fact> facts) implements Section {
        public Facts {
            facts = List.copyOf(facts);
        }
    }

    /** A name with its value. */
    record Fact(String name, String value) {}

    /** A framed word with what it means; shape, colour and word say the same. */
    record Notice(Tone tone, String word, String text) implements Section {}

    /** What a notice is about. */
    enum Tone {
        /** As it should be, within what was looked at. */
        CALM,
        /** Allergen detected, refused, failed. */
        ALARM,
        /** More than an alarm can tell. */
        EXTREME,
        /** Not usable as it stands; something is owed. */
        CAUTION,
        /** To be known. */
        NOTICE
    }

    /**
     * A table.
     *
     * @param rows asked for once, in order, so that they may be many; each has as many cells as there are columns
     */
    record Table(List<Column> columns, Iterable<List<String>> rows) implements Section {
        public Table {
            columns = List.copyOf(columns);
        }

        /** Returns a table of plain text. */
        public static Table of(List<String> header, Iterable<List<String>> rows) {
            return new Table(header.stream().map(Column::text).toList(), rows);
        }

        public List<String> header() {
            return columns.stream().map(Column::title).toList();
        }
    }

    /**
     * A column of a table.
     *
     * @param number its cells are numbers: to the right on paper, numbers in a spreadsheet where they are written as one
     */
    record Column(String title, boolean number) {
        public static Column text(String title) {
            return new Column(title, false);
        }

        public static Column number(String title) {
            return new Column(title, true);
        }
    }

    /** A chart. */
    record Figure(Chart chart) implements Section {}

    /**
     * A strip as it was read; strips that follow one another may stand side by side.
     *
     * @param title for example who read it
     * @param marks what is printed beside its lines
     */
    record StripFigure(String title, Strip strip, Map<LineRole, String> marks) implements Section {
        public StripFigure {
            marks = Map.copyOf(marks);
        }
    }

    /**
     * Labels to cut out, all of one size; only paper shows them.
     *
     * @param width in mm
     * @param height in mm
     */
    record Labels(double width, double height, List<Label> labels) implements Section {
        public Labels {
            labels = List.copyOf(labels);
        }
    }

    /**
     * A code with the words beside it.
     *
     * @param content what the code says
     * @param lines the most important first
     */
    record Label(Symbol symbol, String content, List<String> lines) {
        public Label {
            lines = List.copyOf(lines);
        }
    }

    /** A sort of code. */
    enum Symbol {
        /** A GS1 element string in a Data Matrix; ASCII 29 ends an element that has no fixed length. */
        GS1_DATA_MATRIX,
        /** Text as it stands. */
        QR
    }
}
