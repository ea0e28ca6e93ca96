package wickbench.figures.commands;

import picocli.CommandLine.Option;

/** {@code --level}: the confidence of all limits. */
final class LevelOption {
    @Option(names = "--level", paramLabel = "L", descriptionKey = "level")
    private double level = 0.95;

    double value() {
        return level;
    }
}
