package wickbench.figures.sums;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wickbench.api.check.Complaint;
import wickbench.figures.agreement.AttributeStudy.Judgement;

/** Reads who said what of which item, and what it is; items and readers may have names. */
record JudgementReader(TableReader reader, List<String> columns) {

    List<Judgement> all() {
        TableText text = reader.text();
        if (text.body().isEmpty()) {
            throw new Wrong(reader.input(), Complaint.of(text.source(), SumWords.get("table.empty")));
        }
        List<String> heading = heading(text);
        List<Judgement> judgements = new ArrayList<>();
        for (TableText.Line line : text.body()) {
            if (line.cells().size() != heading.size()) {
                throw reader.complaint(line, "table.cell-count", line.cells().size(), heading.size());
            }
            judgements.add(new Judgement(
                    cell(line, heading, 0),
                    cell(line, heading, 1),
                    answer(line, heading, 2),
                    answer(line, heading, 3)));
        }
        return judgements;
    }

    /** A first row of four words, as readers with names would make it, is a header only when it names the columns. */
    private List<String> heading(TableText text) {
        List<String> names = text.isHeaded()
                ? text.lines().get(0).cells().stream()
                        .map(cell -> cell.toLowerCase(Locale.ROOT))
                        .toList()
                : List.of();
        return names.containsAll(columns) ? names : columns;
    }

    private String cell(TableText.Line line, List<String> heading, int column) {
        return line.cells().get(heading.indexOf(columns.get(column)));
    }

    private boolean answer(TableText.Line line, List<String> heading, int column) {
        double value = reader.number(line, cell(line, heading, column));
        if (value != 0 && value != 1) {
            throw new Wrong(
                    reader.input(),
                    Complaint.at(
                            reader.text().source(),
                            line.number(),
                            columns.get(column),
                            SumWords.get("attributes.zero-or-one", TableText.plain(value))));
        }
        return value == 1;
    }
}
