package wickbench.bench.ui;

import java.util.Arrays;
import java.util.Optional;

/** Where somebody wants to go on the page of a run, as it is written where one comes from. */
sealed interface RunLink {

    /** A stage, by its code. */
    record At(Stage stage) implements RunLink {}

    /** A strip of the run under way, as {@code strip:3}. */
    record Strip(int number) implements RunLink {}

    /** Something due that is to be filled in as a run, as {@code due:KEY}. */
    record Due(String key) implements RunLink {}

    /** Reads a link; empty when it leads nowhere here. */
    static Optional<RunLink> of(String written) {
        if (written.startsWith("due:")) {
            return Optional.of(new Due(written.substring("due:".length())));
        }
        if (written.matches("strip:[0-9]{1,4}")) {
            return Optional.of(new Strip(Integer.parseInt(written.substring("strip:".length()))));
        }
        return Arrays.stream(Stage.values())
                .filter(stage -> stage.code().equals(written))
                .findFirst()
                .map(At::new);
    }
}
