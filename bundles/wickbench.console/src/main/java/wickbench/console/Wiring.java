package wickbench.console;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.UUID;
import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;
import wickbench.api.person.PersonId;
import wickbench.api.words.Words;

/** Settles how picocli behaves here: UTF-8 without colours, one line for what is wrong, the house's ids as types. */
final class Wiring {
    private static final Words WORDS = Words.of(Wiring.class, "console");

    private Wiring() {}

    /** Says why a call failed, and returns its exit code. */
    interface Failed {
        int code(Throwable failure);
    }

    /**
     * Settles it for one call.
     *
     * @param folder where relative paths start; empty for the folder that the program was started in
     */
    static CommandLine of(CommandLine line, Streams to, Path folder, Failed failed) {
        return line.setOut(new PrintWriter(to.out(), true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(to.err(), true, StandardCharsets.UTF_8))
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setExpandAtFiles(false)
                .setUsageHelpAutoWidth(true)
                .registerConverter(PersonId.class, converter(PersonId::new))
                .registerConverter(UUID.class, converter(UUID::fromString))
                .registerConverter(LocalDate.class, Wiring::date)
                .registerConverter(Path.class, folder::resolve)
                .setParameterExceptionHandler((e, arguments) -> failed.code(Expected.told(e)))
                .setExecutionExceptionHandler((e, command, result) -> failed.code(e));
    }

    private static <T> CommandLine.ITypeConverter<T> converter(java.util.function.Function<String, T> parse) {
        return text -> {
            try {
                return parse.apply(text);
            } catch (IllegalArgumentException e) {
                throw new TypeConversionException(e.getMessage());
            }
        };
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException(WORDS.get("date.expected", text));
        }
    }
}
