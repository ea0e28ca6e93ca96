package wickbench.tests;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wickbench.launcher.CannotStart;

/** The built program in each of the install sets that a test asks for, started once and called again and again. */
final class StartedPrograms implements AutoCloseable {
    private final Path temporary;
    private final Map<String, StartedProgram> started = new HashMap<>();

    StartedPrograms(Path temporary) {
        this.temporary = temporary;
    }

    /**
     * Returns the program with these features, as {@code --features} takes them.
     *
     * @param features parted by commas
     */
    StartedProgram with(String features) throws CannotStart, IOException {
        StartedProgram program = started.get(features);
        if (program == null) {
            program = StartedProgram.of(List.of(features.split(",")), temporary.resolve(features));
            started.put(features, program);
        }
        return program;
    }

    @Override
    public void close() throws IOException {
        for (StartedProgram program : started.values()) {
            program.close();
        }
    }
}
