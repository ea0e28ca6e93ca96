package wickbench.training.face;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Strip;
import wickbench.api.report.Csv;
import wickbench.api.report.WholeFile;
import wickbench.api.words.Coded;
import wickbench.figures.sums.TableText;
import wickbench.training.Call;
import wickbench.training.Round;
import wickbench.training.book.Said;
import wickbench.training.book.TrainingWords;

/**
 * The sheet that a reader fills in: a row a strip, in the order of the round.
 *
 * <p>The order is part of what was asked: a sheet in another one was copied, sorted, or read otherwise than told, and times and
 * calls may have changed places. So it is refused whole.
 */
final class CallSheet {
    private static final String CODE = "code";
    private static final String OUTCOME = "outcome";
    private static final String STARTED = "started";
    private static final String READ = "read";

    private final Round round;
    private final ZoneId zone;

    CallSheet(Round round, ZoneId zone) {
        this.round = round;
        this.zone = zone;
    }

    private List<String> lines() {
        return round.plan().format().lines().stream().map(LineRole::code).toList();
    }

    List<Call> read(Path file) {
        List<String> asked = new ArrayList<>(List.of(CODE));
        asked.addAll(lines());
        Sheet sheet = Sheet.read(file, asked, List.of(OUTCOME, STARTED, READ));
        List<Call> calls = new ArrayList<>();
        int place = 0;
        for (TableText.Line line : sheet.lines()) {
            order(sheet, line, place++);
            call(sheet, line).ifPresent(calls::add);
        }
        sheet.finish();
        if (calls.size() < round.codes().size()) {
            throw Said.wrong(sheet.source(), "sheet.short", round.codes().size(), calls.size());
        }
        return calls;
    }

    private void order(Sheet sheet, TableText.Line line, int place) {
        String found = code(sheet.text(line, CODE).orElse(""));
        if (!round.codes().contains(found)) {
            sheet.complain(line, CODE, TrainingWords.get("call.unknown", found, round.id()));
        } else if (place >= round.codes().size() || !round.codes().get(place).equals(found)) {
            String expected = place < round.codes().size() ? round.codes().get(place) : "-";
            sheet.complain(line, CODE, TrainingWords.get("sheet.other-order", expected, found));
        }
    }

    static String code(String text) {
        return text.strip().toUpperCase(Locale.ROOT);
    }

    private Optional<Call> call(Sheet sheet, TableText.Line line) {
        Map<LineRole, Seen> seen = new EnumMap<>(LineRole.class);
        for (LineRole role : round.plan().format().lines()) {
            sheet.asked(line, role.code(), CallSheet::seen).ifPresent(each -> seen.put(role, each));
        }
        Optional<Outcome> outcome = sheet.optional(line, OUTCOME, code -> Coded.of(Outcome.class, code));
        Optional<Instant> started = sheet.optional(line, STARTED, text -> Typed.instant(text, zone));
        Optional<Instant> read = sheet.optional(line, READ, text -> Typed.instant(text, zone));
        if (seen.size() < lines().size()) {
            return Optional.empty();
        }
        Strip strip = new Strip(round.plan().format(), seen);
        return Optional.of(new Call(
                code(sheet.text(line, CODE).orElse("")),
                strip,
                outcome.orElseGet(() -> Call.meaning(strip)),
                started,
                read));
    }

    static Seen seen(String code) {
        return Coded.of(Seen.class, code.strip().toLowerCase(Locale.ROOT));
    }

    /** Writes the sheet with its codes, to be filled in. */
    void write(Path file) {
        List<String> header = new ArrayList<>(List.of(CODE));
        header.addAll(lines());
        header.addAll(List.of(OUTCOME, STARTED, READ));
        List<List<String>> rows = new ArrayList<>(List.of(header));
        for (String code : round.codes()) {
            List<String> row = new ArrayList<>(List.of(code));
            while (row.size() < header.size()) {
                row.add("");
            }
            rows.add(row);
        }
        write(file, rows);
    }

    static void write(Path file, List<List<String>> rows) {
        StringBuilder text = new StringBuilder();
        try {
            for (List<String> row : rows) {
                Csv.line(text, row);
            }
            new WholeFile(file).write(bytes -> {
                bytes.write(text.toString().getBytes(StandardCharsets.UTF_8));
                return true;
            });
        } catch (IOException e) {
            throw Said.wrong(file.getFileName().toString(), "file.unwritable", e.getMessage());
        }
    }
}
