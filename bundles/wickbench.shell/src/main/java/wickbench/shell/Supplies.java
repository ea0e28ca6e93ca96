package wickbench.shell;

import java.util.Optional;
import wickbench.api.words.KeptLanguage;
import wickbench.widgets.FileChoice;
import wickbench.widgets.Memory;

/**
 * What a window stands on.
 *
 * @param language where the language of the next start is kept; empty for a window that keeps nothing
 */
record Supplies(
        Places places,
        Neighbours neighbours,
        Workers workers,
        Session session,
        Memory memory,
        FileChoice files,
        Optional<KeptLanguage> language) {}
