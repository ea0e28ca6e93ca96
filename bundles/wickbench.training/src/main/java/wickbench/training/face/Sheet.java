package wickbench.training.face;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.figures.sums.TableText;
import wickbench.training.book.Said;
import wickbench.training.book.TrainingWords;

/**
 * A sheet with a header, its cells taken by column; what is wrong is told with file, line and column, all of it at once.
 *
 * @param names the columns, in lower case
 */
record Sheet(String source, List<String> names, List<TableText.Line> lines, List<Complaint> complaints) {
    static Sheet read(Path file, List<String> asked, List<String> optional) {
        String source = file.getFileName().toString();
        TableText text = TableText.of(source, bytes(file, source));
        if (text.lines().isEmpty()) {
            throw new BadInput(Complaint.of(source, TrainingWords.get("sheet.empty")));
        }
        TableText.Line header = text.lines().get(0);
        List<String> names = header.cells().stream()
                .map(cell -> cell.toLowerCase(Locale.ROOT))
                .toList();
        List<Complaint> complaints = new ArrayList<>();
        asked.stream()
                .filter(name -> !names.contains(name))
                .forEach(name -> complaints.add(
                        Complaint.at(source, header.number(), name, TrainingWords.get("sheet.missing-column"))));
        names.stream()
                .filter(name -> !asked.contains(name) && optional.stream().noneMatch(name::startsWith))
                .forEach(name -> complaints.add(
                        Complaint.at(source, header.number(), name, TrainingWords.get("sheet.unknown-column"))));
        if (!complaints.isEmpty()) {
            throw new BadInput(complaints);
        }
        return new Sheet(source, names, text.lines().subList(1, text.lines().size()), complaints);
    }

    private static byte[] bytes(Path file, String source) {
        try {
            if (Files.size(file) > TableText.LARGEST_BYTES) {
                return new byte[(int) TableText.LARGEST_BYTES + 1];
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw Said.wrong(source, "file.unreadable", e.getMessage());
        }
    }

    Optional<String> text(TableText.Line line, String column) {
        int place = names.indexOf(column);
        return place < 0 || place >= line.cells().size()
                ? Optional.empty()
                : Optional.of(line.cells().get(place)).filter(cell -> !cell.isBlank());
    }

    /** Takes a cell that must not be blank. */
    <T> Optional<T> asked(TableText.Line line, String column, Function<String, T> parse) {
        if (text(line, column).isEmpty()) {
            complain(line, column, TrainingWords.get("cell.blank"));
        }
        return optional(line, column, parse);
    }

    <T> Optional<T> optional(TableText.Line line, String column, Function<String, T> parse) {
        return text(line, column).flatMap(cell -> {
            try {
                return Optional.of(parse.apply(cell));
            } catch (IllegalArgumentException e) {
                complain(line, column, e.getMessage());
                return Optional.empty();
            }
        });
    }

    void complain(TableText.Line line, String column, String text) {
        complaints.add(Complaint.at(source, line.number(), column, text));
    }

    /** Ends with everything that was wrong. */
    void finish() {
        if (!complaints.isEmpty()) {
            throw new BadInput(complaints);
        }
    }
}
