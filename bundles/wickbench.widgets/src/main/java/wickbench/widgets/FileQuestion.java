package wickbench.widgets;

import java.util.List;

/**
 * What a person is asked for.
 *
 * @param title says what for; blank where the system's own words do
 * @param name a file's name that is offered, or the folder to begin in; blank for none
 * @param endings of files that are shown, the usual ones first; empty for a folder
 */
public record FileQuestion(Sort sort, String title, String name, List<String> endings) {
    /** What is done with what is chosen. */
    public enum Sort {
        SAVE,
        OPEN,
        FOLDER
    }

    public FileQuestion {
        endings = List.copyOf(endings);
    }

    static FileQuestion save(String name, String... endings) {
        return new FileQuestion(Sort.SAVE, "", name, List.of(endings));
    }

    static FileQuestion open(String title, String... endings) {
        return new FileQuestion(Sort.OPEN, title, "", List.of(endings));
    }

    static FileQuestion folder(String title, String from) {
        return new FileQuestion(Sort.FOLDER, title, from, List.of());
    }
}
