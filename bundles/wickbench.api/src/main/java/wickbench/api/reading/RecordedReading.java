package wickbench.api.reading;

import java.util.List;
import wickbench.api.gate.Answer;
import wickbench.api.method.Method;

/**
 * The body of {@code reading.recorded}: what was seen, what it was judged by, and what followed.
 *
 * @param method a copy of the method as it was, so that the reading can be judged where the method is not known
 * @param answers what the neighbours said as of the start, absent ones included
 */
public record RecordedReading(Reading reading, Method method, List<Answer> answers, Verdict verdict) {
    public static final String KIND = "reading.recorded";
    public static final int VERSION = 1;

    public RecordedReading {
        answers = List.copyOf(answers);
    }
}
