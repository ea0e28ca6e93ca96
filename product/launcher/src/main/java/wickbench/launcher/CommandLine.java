package wickbench.launcher;

import java.util.Arrays;
import java.util.List;

/** Which features to start, and what is left for the application. */
record CommandLine(List<String> features, String[] rest) {

    static final String PROPERTY = "wickbench.features";
    private static final String OPTION = "--features";
    private static final String EVERYTHING = "complete";

    /** {@code --features A,B} counts only as the very first argument; it wins over the system property {@code told}, which may be null. */
    static CommandLine parse(String[] arguments, String told) {
        if (arguments.length > 0 && arguments[0].equals(OPTION)) {
            String named = arguments.length > 1 ? arguments[1] : "";
            return new CommandLine(
                    names(named), Arrays.copyOfRange(arguments, Math.min(2, arguments.length), arguments.length));
        }
        return new CommandLine(names(told == null ? EVERYTHING : told), arguments);
    }

    private static List<String> names(String commaSeparated) {
        return Arrays.stream(commaSeparated.split(","))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList();
    }
}
