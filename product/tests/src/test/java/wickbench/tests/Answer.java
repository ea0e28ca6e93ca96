package wickbench.tests;

import java.util.Set;
import java.util.stream.Collectors;

/** What a call of the program returned and printed. */
record Answer(int code, String out, String err) {

    /** The names that a help text lists under its heading of commands: indented by two, the first word of their line. */
    Set<String> commands() {
        return out.lines()
                .dropWhile(line -> !line.startsWith("Commands:"))
                .skip(1)
                .takeWhile(line -> line.startsWith("  "))
                .filter(line -> !line.startsWith("   "))
                .map(line -> line.strip().split("\\s+")[0])
                .collect(Collectors.toSet());
    }
}
