package wickbench.figures.commands;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;

/** Reads results of blank or low samples: {@code value}, {@code sample,value} or {@code lot,sample,value} a row. */
final class BlankFile {
    private final TableText text;

    private BlankFile(TableText text) {
        this.text = text;
    }

    /** The results of one lot, and of how many samples they are. */
    record Lot(String name, double[] values, int samples) {}

    static List<Lot> read(Path file) {
        try {
            return new BlankFile(TableText.read(file)).lots();
        } catch (IOException e) {
            throw new BadInput(Complaint.of(file.toString(), FiguresWords.get("table.unreadable", FileTrouble.of(e))));
        }
    }

    private List<Lot> lots() {
        Map<String, List<Double>> values = new LinkedHashMap<>();
        Map<String, Set<String>> samples = new LinkedHashMap<>();
        int width = text.lines().isEmpty() ? 0 : text.lines().get(0).cells().size();
        for (TableText.Line line :
                text.lines().subList(isHeaded() ? 1 : 0, text.lines().size())) {
            List<String> cells = line.cells();
            if (cells.size() != width || width > 3) {
                throw complaint(line, FiguresWords.get("table.cell-count", cells.size(), Math.min(width, 3)));
            }
            String lot = width == 3 ? cells.get(0) : "";
            values.computeIfAbsent(lot, name -> new ArrayList<>())
                    .add(TableFile.number(text, line, cells.get(width - 1)));
            samples.computeIfAbsent(lot, name -> new LinkedHashSet<>()).add(width > 1 ? cells.get(width - 2) : "");
        }
        if (values.isEmpty()) {
            throw new BadInput(Complaint.of(text.source(), FiguresWords.get("table.empty")));
        }
        List<Lot> lots = new ArrayList<>();
        values.forEach((name, all) -> lots.add(new Lot(
                name,
                all.stream().mapToDouble(Double::doubleValue).toArray(),
                samples.get(name).size())));
        return lots;
    }

    private boolean isHeaded() {
        return !text.lines().isEmpty() && TableFile.isHeader(text.lines().get(0).cells());
    }

    private BadInput complaint(TableText.Line line, String what) {
        return new BadInput(Complaint.at(text.source(), line.number(), "", what));
    }
}
