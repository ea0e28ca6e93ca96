package wickbench.figures.commands;

import java.util.Arrays;
import java.util.function.Function;
import java.util.stream.Collectors;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;

/** An option that is one of a few words. */
final class Choice {
    private Choice() {}

    /** Returns the value with this code, or ends with a complaint that names all codes. */
    static <T> T of(String option, String code, T[] values, Function<T, String> codes) {
        return Arrays.stream(values)
                .filter(value -> codes.apply(value).equals(code))
                .findFirst()
                .orElseThrow(() -> new BadInput(Complaint.of(
                        option,
                        FiguresWords.get(
                                "choice.expected",
                                Arrays.stream(values).map(codes).collect(Collectors.joining(", ")),
                                code))));
    }
}
