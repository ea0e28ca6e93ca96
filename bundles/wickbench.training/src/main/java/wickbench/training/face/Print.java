package wickbench.training.face;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wickbench.training.Competence;
import wickbench.training.CompetenceState;
import wickbench.training.Due;
import wickbench.training.Happening;
import wickbench.training.Matrix;
import wickbench.training.book.TrainingWords;

/** What training knows, in words; reports and commands say the same. */
final class Print {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private final ZoneId zone;

    Print(ZoneId zone) {
        this.zone = zone;
    }

    String time(Instant at) {
        return MINUTE.format(at.atZone(zone));
    }

    /** Returns a competence as the matrix shows it: the word first, then the day that matters. */
    static String cell(Matrix matrix, Competence cell) {
        String word = word(matrix.dueSoon(cell), cell.state());
        Optional<LocalDate> day = cell.lapse().map(lapse -> lapse.day()).or(cell::holdsUntil);
        return day.map(each -> TrainingWords.get("cell", word, each)).orElse(word);
    }

    private static String word(boolean soon, CompetenceState state) {
        return soon && state == CompetenceState.AUTHORISED
                ? TrainingWords.get("state.due-soon")
                : TrainingWords.get("state." + state.code());
    }

    static List<String> matrixHeader(Matrix matrix) {
        List<String> header = new ArrayList<>(List.of(TrainingWords.get("column.person")));
        matrix.methods().forEach(method -> header.add(method.value()));
        return header;
    }

    static List<List<String>> matrixRows(Matrix matrix) {
        return matrix.people().stream()
                .map(person -> {
                    List<String> row = new ArrayList<>(List.of(person.display()));
                    matrix.methods()
                            .forEach(method -> row.add(matrix.cell(person.id(), method)
                                    .map(cell -> cell(matrix, cell))
                                    .orElse("")));
                    return row;
                })
                .map(List::copyOf)
                .toList();
    }

    static List<String> competenceHeader() {
        return columns("method", "state", "until", "untested-until", "tested", "version", "reason");
    }

    static List<String> competenceRow(Competence cell) {
        return List.of(
                cell.method().value(),
                TrainingWords.get("state." + cell.state().code())
                        + cell.lapse()
                                .map(lapse -> ", "
                                        + TrainingWords.get(
                                                "lapse." + lapse.cause().code(), lapse.day()))
                                .orElse(""),
                cell.until().map(LocalDate::toString).orElse(""),
                cell.untestedUntil().map(LocalDate::toString).orElse(""),
                cell.tested().map(LocalDate::toString).orElse(""),
                cell.version()
                        .map(version -> TrainingWords.get("version.read", cell.read(), version))
                        .orElse(""),
                cell.why().orElse(""));
    }

    static List<String> happeningHeader() {
        return columns("when", "what", "by", "signed", "facts");
    }

    List<String> happeningRow(Happening happening) {
        String kind = happening.entry().kind();
        return List.of(
                time(happening.at()),
                kind.startsWith("training.") || kind.startsWith("round.") ? TrainingWords.get("kind." + kind) : kind,
                happening.entry().by().value(),
                TrainingWords.get(happening.signed() ? "signed.yes" : "signed.no"),
                facts(happening.facts()));
    }

    private static String facts(Map<String, String> facts) {
        return facts.entrySet().stream()
                .map(fact -> fact.getKey().replace('_', ' ') + " " + fact.getValue())
                .collect(Collectors.joining("; "));
    }

    static List<String> dueHeader() {
        return columns("what", "day", "person", "about");
    }

    static List<String> dueRow(Due due) {
        return List.of(TrainingWords.get("due." + due.what().code()), due.day().toString(), due.person(), due.about());
    }

    static List<String> columns(String... names) {
        return java.util.Arrays.stream(names)
                .map(name -> TrainingWords.get("column." + name))
                .toList();
    }
}
