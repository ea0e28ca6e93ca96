package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program speaks Spanish through its fragments, and English where that is asked for, whatever the machine speaks. */
class SpokenLanguageTest {
    private static final String ENGLISH = "Shows, proves and seals";
    private static final String SPANISH = "Mostrar, probar y sellar";

    private final Locale before = Locale.getDefault();

    @TempDir
    Path temporary;

    @AfterEach
    void giveBack() {
        Locale.setDefault(before);
    }

    @Test
    void the_words_of_every_bundle_come_in_the_language_that_was_decided() throws Exception {
        try (var program = StartedProgram.of(List.of("base", "spanish"), temporary)) {
            assertThat(program.set().notRunning()).isEmpty();
            Locale.setDefault(Locale.ENGLISH);
            assertThat(help(program)).contains(ENGLISH);
            assertThat(help(program, "--language", "es")).contains(SPANISH);
            Locale.setDefault(Locale.forLanguageTag("es-MX"));
            assertThat(help(program)).contains(SPANISH);
            assertThat(help(program, "--language", "en")).contains(ENGLISH);
            assertThat(program.call("--language", "fr", "journal", "--help").err())
                    .contains("en, es");
        }
    }

    /** A bundle takes words in only as it is made ready; who wants them later is told what to do. */
    @Test
    void a_language_says_what_it_brings_and_comes_and_goes_with_a_start() throws Exception {
        Locale.setDefault(Locale.ENGLISH);
        try (var program = StartedProgram.of(List.of("base", "spanish"), temporary)) {
            assertThat(feature(program, "list").out()).containsPattern("spanish .* of the product +words in Spanish");
            assertThat(feature(program, "remove", "spanish").err()).contains("name it in --features");
            assertThat(program.set().notRunning()).isEmpty();
        }
        try (var program = StartedProgram.of(List.of("base"), temporary)) {
            assertThat(feature(program, "add", "spanish").err()).contains("name it in --features");
            assertThat(program.set().notRunning()).isEmpty();
        }
    }

    private Answer feature(StartedProgram program, String... command) throws ReflectiveOperationException {
        var arguments =
                new ArrayList<>(List.of("--home", temporary.resolve("home").toString(), "--as", "ada", "feature"));
        arguments.addAll(List.of(command));
        return program.call(arguments.toArray(String[]::new));
    }

    private String help(StartedProgram program, String... options) throws ReflectiveOperationException {
        var arguments = new ArrayList<>(List.of(options));
        arguments.addAll(List.of("--home", temporary.resolve("home").toString(), "journal", "--help"));
        Answer answer = program.call(arguments.toArray(String[]::new));
        assertThat(answer.err()).isEmpty();
        return answer.out().replaceAll("\\s+", " ");
    }
}
