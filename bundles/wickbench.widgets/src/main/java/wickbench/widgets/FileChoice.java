package wickbench.widgets;

import java.nio.file.Path;
import java.util.Optional;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * The one door by which pages ask a person for a file or a folder.
 *
 * <p>In a window the system's dialogs answer. Whoever offers a service of this kind with a higher ranking answers in their place.
 * It is asked on the UI thread, and answers when the person has.
 */
@ConsumerType
@FunctionalInterface
public interface FileChoice {

    /** Asks; empty when the person chose nothing. */
    Optional<Path> ask(FileQuestion question);

    /**
     * Asks where something shall be written.
     *
     * @param name a file's name that is offered
     * @param endings as in {@code *.pdf}, the usual one first
     */
    default Optional<Path> save(String name, String... endings) {
        return ask(FileQuestion.save(name, endings));
    }

    /**
     * Asks which file shall be read.
     *
     * @param title says what for
     * @param endings as in {@code *.csv;*.txt}, the usual ones first
     */
    default Optional<Path> open(String title, String... endings) {
        return ask(FileQuestion.open(title, endings));
    }

    /**
     * Asks for a folder.
     *
     * @param title says what for
     * @param from where to begin; blank for where the system likes
     */
    default Optional<Path> folder(String title, String from) {
        return ask(FileQuestion.folder(title, from));
    }
}
