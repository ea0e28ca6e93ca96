package wickbench.ledger.services;

import java.util.List;
import java.util.stream.Collectors;
import wickbench.api.reading.RecordedReading;
import wickbench.ledger.Statement;
import wickbench.reading.OutcomeWords;

/**
 * What a correction changed: each line that one statement says and the other does not.
 *
 * @param old what was said before
 * @param now what is said instead
 */
record Changes(String old, String now) {

    static Changes between(Statement before, Statement after, SiteClock clock) {
        List<String> was = said(before.reading(), clock);
        List<String> is = said(after.reading(), clock);
        return new Changes(without(was, is), without(is, was));
    }

    private static List<String> said(RecordedReading reading, SiteClock clock) {
        Lines lines = new Lines();
        lines.fact(
                "show.outcome",
                OutcomeWords.text(
                        reading.verdict().outcome(), reading.reading().sample().dilution()));
        new ReadingText(lines, clock).add(reading);
        return lines.all().stream()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
    }

    private static String without(List<String> lines, List<String> others) {
        return lines.stream().filter(line -> !others.contains(line)).collect(Collectors.joining("\n"));
    }
}
