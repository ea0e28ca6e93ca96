package wickbench.training.book;

import java.util.List;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.training.Questions;
import wickbench.training.Questions.Question;

/** The body of {@code training.questions-issued}. */
final class QuestionsJson {
    private QuestionsJson() {}

    static Json.Obj write(Questions set) {
        return Json.object()
                .with("set", set.name())
                .with("needed", set.needed())
                .with(
                        "questions",
                        Json.array(set.questions().stream()
                                .map(QuestionsJson::question)
                                .toList()));
    }

    private static Json.Obj question(Question question) {
        return Json.object()
                .with("id", question.id())
                .with("text", question.text())
                .with("choices", Json.texts(question.choices()))
                .with("right", question.right());
    }

    static Questions read(Fields fields) {
        List<Question> questions = fields.children("questions").stream()
                .map(each -> new Question(
                        each.text("id"), each.text("text"), each.texts("choices"), (int) each.whole("right")))
                .toList();
        return new Questions(fields.text("set"), questions, (int) fields.whole("needed"));
    }
}
