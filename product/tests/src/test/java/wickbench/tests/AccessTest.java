package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.testing.Walked;

/**
 * Everybody can use every page: by keys alone, and by a screen reader.
 *
 * <p>Each place of the rail is opened in the window of the built product, each of its tabs, and the form behind each button with three
 * dots. What takes keys has a name, and what is painted a role; buttons have letters of their own; Tab reaches everything in the
 * order of reading and leaves it again; and where the keyboard is, something is painted that is not there without it.
 */
class AccessTest {
    /** In one language all is asked; another changes the words only. */
    private static final Map<String, String> WALKS = Map.of(
            "en", "wickbench.testing.ui.access.AccessWalk",
            "es", "wickbench.testing.ui.access.WordsWalk");

    /** Fewer would mean that the walk does not come about. */
    private static final int AT_LEAST_VIEWS = 60;

    private static final int AT_LEAST_CONTROLS = 1000;

    @TempDir
    Path temporary;

    @Test
    void every_view_is_for_everybody_in_each_language() throws Exception {
        try (StartedProgram program = StartedProgram.of(List.of("complete"), temporary)) {
            AtTheWindow window = new AtTheWindow(DemoHome.found(program, temporary.resolve("home")));
            for (String language : WALKS.keySet()) {
                Walked walked = window.walks(DemoHome.REVIEWER, language, WALKS.get(language));
                assertThat(walked.views()).as(language).hasSizeGreaterThan(AT_LEAST_VIEWS);
                assertThat(walked.controls()).as(language).isGreaterThan(AT_LEAST_CONTROLS);
                assertThat(walked.misses()).as(language).isEmpty();
            }
        }
    }
}
