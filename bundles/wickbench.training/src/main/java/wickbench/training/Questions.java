package wickbench.training;

import java.util.List;

/**
 * The site's own questions about one matter.
 *
 * @param name short, the same through all its editions
 * @param needed how many must be answered right
 */
public record Questions(String name, List<Question> questions, int needed) {
    public Questions {
        questions = List.copyOf(questions);
    }

    /**
     * One question.
     *
     * @param id short, the same through all editions
     * @param choices in the order of the file
     * @param right the number of the right choice, from 1
     */
    public record Question(String id, String text, List<String> choices, int right) {
        public Question {
            choices = List.copyOf(choices);
        }
    }
}
