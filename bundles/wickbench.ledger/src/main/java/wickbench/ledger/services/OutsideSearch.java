package wickbench.ledger.services;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import picocli.CommandLine.Option;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.ledger.acts.Outside;

/** Which reports of outside laboratories are asked for; conditions go together. */
final class OutsideSearch {
    @Option(names = "--laboratory", paramLabel = "NAME")
    private Optional<String> laboratory = Optional.empty();

    @Option(names = "--target", paramLabel = "NAME")
    private Optional<String> target = Optional.empty();

    @Option(names = "--batch", paramLabel = "BATCH")
    private Optional<String> batch = Optional.empty();

    @Option(names = "--says", paramLabel = "detected|not-detected")
    private Optional<String> says = Optional.empty();

    @Option(names = "--from", paramLabel = "DATE")
    private Optional<String> from = Optional.empty();

    @Option(names = "--to", paramLabel = "DATE")
    private Optional<String> to = Optional.empty();

    /**
     * Returns what a report must be.
     *
     * @param because a result because of which it was asked; empty for any or none
     */
    Predicate<Outside> wanted(Optional<UUID> because, ZoneId zone) {
        Optional<Boolean> detected = says.map(text -> ActCommands.parsed("--says", text, OutsideOptions::detected));
        Optional<LocalDate> first = from.map(text -> day("--from", text));
        Optional<LocalDate> last = to.map(text -> day("--to", text));
        return report -> {
            LocalDate day = report.reported().atZone(zone).toLocalDate();
            return holds(laboratory, report.laboratory())
                    && holds(target, report.target())
                    && batch.filter(name -> !report.batch().equals(Optional.of(name)))
                            .isEmpty()
                    && detected.filter(found -> found != report.detected()).isEmpty()
                    && first.filter(day::isBefore).isEmpty()
                    && last.filter(day::isAfter).isEmpty()
                    && because.filter(id -> !report.results().contains(id)).isEmpty();
        };
    }

    /** Names of laboratories and foods are found by a part of them, in any case of letters. */
    private static boolean holds(Optional<String> asked, String name) {
        return asked.filter(part -> !name.toLowerCase(Locale.ROOT).contains(part.toLowerCase(Locale.ROOT)))
                .isEmpty();
    }

    private static LocalDate day(String option, String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new BadInput(Complaint.of(option, LedgerWords.get("report.day.expected", text)));
        }
    }
}
