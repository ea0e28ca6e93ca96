package wickbench.training.face;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.figures.sums.TableText;
import wickbench.training.Paper;
import wickbench.training.Questions;
import wickbench.training.Questions.Question;
import wickbench.training.book.TrainingWords;

/** Questions as a site writes them, and the paper that one person fills in. */
final class QuestionSheet {
    private static final String CHOICE = "choice_";
    private static final String GIVEN = "given";
    private static final int MOST_CHOICES = 9;

    private QuestionSheet() {}

    static Questions questions(String name, Path file, Optional<Integer> needed) {
        Sheet sheet = Sheet.read(file, List.of("id", "question", "right"), List.of(CHOICE));
        List<Question> questions = new ArrayList<>();
        for (TableText.Line line : sheet.lines()) {
            Optional<String> id = sheet.asked(line, "id", text -> text);
            Optional<String> text = sheet.asked(line, "question", each -> each);
            Optional<Integer> right = sheet.asked(line, "right", QuestionSheet::number);
            List<String> choices = choices(sheet, line);
            if (id.isPresent() && text.isPresent() && right.isPresent()) {
                questions.add(new Question(id.get(), text.get(), choices, right.get()));
            }
        }
        sheet.finish();
        return new Questions(name, questions, needed.orElse(questions.size()));
    }

    private static List<String> choices(Sheet sheet, TableText.Line line) {
        List<String> choices = new ArrayList<>();
        for (int i = 1; i <= MOST_CHOICES; i++) {
            sheet.text(line, CHOICE + i).ifPresent(choices::add);
        }
        return choices;
    }

    private static int number(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(TrainingWords.get("number.expected", text), e);
        }
    }

    static void write(Paper paper, Path file) {
        int most = paper.items().stream()
                .mapToInt(item -> item.choices().size())
                .max()
                .orElse(0);
        List<String> header = new ArrayList<>(List.of("id", "question"));
        for (int i = 1; i <= most; i++) {
            header.add(CHOICE + i);
        }
        header.add(GIVEN);
        List<List<String>> rows = new ArrayList<>(List.of(header));
        for (Paper.Item item : paper.items()) {
            List<String> row = new ArrayList<>(List.of(item.id(), item.text()));
            row.addAll(item.choices());
            while (row.size() < header.size()) {
                row.add("");
            }
            rows.add(row);
        }
        CallSheet.write(file, rows);
    }

    /** A paper with what was chosen on it, by question. */
    record Filled(Paper paper, Map<String, Integer> choices) {}

    static Filled filled(String set, Path file) {
        Sheet sheet = Sheet.read(file, List.of("id", "question", GIVEN), List.of(CHOICE));
        List<Paper.Item> items = new ArrayList<>();
        Map<String, Integer> given = new LinkedHashMap<>();
        for (TableText.Line line : sheet.lines()) {
            Optional<String> id = sheet.asked(line, "id", text -> text);
            Optional<Integer> choice = sheet.asked(line, GIVEN, QuestionSheet::number);
            String text = sheet.text(line, "question").orElse("");
            List<String> choices = choices(sheet, line);
            if (id.isPresent() && choice.isPresent()) {
                items.add(new Paper.Item(id.get(), text, choices));
                given.put(id.get(), choice.get());
            }
        }
        sheet.finish();
        return new Filled(new Paper(set, items), given);
    }
}
