package wickbench.reading;

import java.util.List;
import java.util.stream.Stream;

/** A recorded reading with one thing wrong each. */
final class BadBodies {
    private BadBodies() {}

    /**
     * One wrong body.
     *
     * @param complaints what the reader says, without the source's name
     * @param schemaSees whether the schema can tell
     */
    record Body(String text, boolean schemaSees, List<String> complaints) {
        @Override
        public String toString() {
            return complaints.toString();
        }
    }

    static List<Body> all() {
        return Stream.of(
                        wrong(
                                "'control':'faint','hook':'seen'",
                                "'control':'faint'",
                                LINES + "hook: is not answered;" + " a sandwich-hook strip has this line"),
                        wrong(
                                STRIP,
                                "'format':'sandwich','lines':{'control':'faint','hook'",
                                LINES + "hook: a sandwich strip has no such line"),
                        wrong(
                                STRIP,
                                "'format':'strip','lines':{'control':'faint','hook'",
                                "reading.strip.format:"
                                        + " expected one of sandwich, sandwich-hook, competitive, found 'strip'"),
                        wrong(
                                "'control':'faint'",
                                "'control':'bright'",
                                LINES + "control: expected one of seen, faint, not-seen, damaged, found 'bright'"),
                        wrong(
                                "'dilution':1,",
                                "'dilution':0.5,",
                                "reading.sample.dilution: expected a dilution from 1" + " on, found 0.5"),
                        wrong("'dilution':1,", "", "reading.sample.dilution: is missing; expected a number"),
                        wrong(
                                "'dilution':1,",
                                "'area_cm2':0,'dilution':1,",
                                "reading.sample.area_cm2: expected an area" + " above 0 cm², found 0"),
                        wrong("'code':'S-001'", "'code':' '", "reading.sample.code: is blank"),
                        wrong("08:05:30.000Z", "08:05:30Z", TIME + "found '2026-03-01T08:05:30Z'"),
                        wrong("08:05:30.000Z", "08:05:30.000+01:00", TIME + "found '2026-03-01T08:05:30.000+01:00'"),
                        unseen("08:05:30.000Z", "28:05:30.000Z", TIME + "found '2026-03-01T28:05:30.000Z'"),
                        wrong(
                                "'shaken_s':60",
                                "'shaken_s':-1",
                                "reading.times.shaken_s: expected 0 to 31536000 seconds"
                                        + " with at most three decimals, found -1"),
                        wrong(
                                "'operator':'op-03'",
                                "'operator':'Op 3'",
                                "reading.operator: expected a person id of"
                                        + " lower-case letters, digits, dots, hyphens and underscores, found 'Op 3'"),
                        wrong("'lot':'A17',", "", "reading.lot: is missing; expected a lot number"),
                        wrong("'rinse pH':6.5", "'rinse pH':'6.5'", "reading.pre_checks.rinse pH: expected a number"),
                        wrong(
                                "'origin':{'by':'bench'}",
                                "'origin':{'by':'air'}",
                                "reading.origin.by: expected one of" + " bench, sheet, found 'air'"),
                        wrong(
                                "'origin':{'by':'bench'}",
                                "'origin':{'by':'sheet','file':'a.csv','line':0}",
                                "reading.origin.line: expected a whole number from 1 on, found 0"),
                        wrong(
                                "'says':'not-checked'",
                                "'says':'perhaps'",
                                "answers[2].says: expected one of cleared," + " refused, not-checked, found 'perhaps'"),
                        wrong(
                                "'reasons':[",
                                "'grounds':[",
                                "answers[1].reasons: is missing; expected a list",
                                "answers[1].grounds: is not a field of this format"),
                        wrong(
                                "'answers':[",
                                "'replies':[",
                                "answers: is missing; expected a list",
                                "replies: is not a field of this format"),
                        wrong(
                                "'outcome':'positive'",
                                "'outcome':'free'",
                                "verdict.outcome: expected one of negative,"
                                        + " positive, positive-above-range, invalid, found 'free'"),
                        wrong(
                                "'outcome':'positive'",
                                "'owes':'nothing','outcome':'positive'",
                                "verdict.owes: is not a field of this format"),
                        wrong(
                                "'findings':[",
                                "'finds':[",
                                "verdict.findings: is missing; expected a list",
                                "verdict.finds: is not a field of this format"),
                        wrong(
                                "'owed':[",
                                "'owes':[",
                                "verdict.owed: is missing; expected a list",
                                "verdict.owes: is not a field of this format"),
                        wrong(
                                "'re-clean'",
                                "'pray'",
                                "verdict.owed: expected one of repeat, repeat-diluted, bracket,"
                                        + " hold, re-clean, re-test, decide, run-control, found 'pray'"),
                        wrong("'sign':false", "'sign':0", "verdict.sign: expected true or false"),
                        wrong(
                                "'severity':'caution'",
                                "'severity':'mild'",
                                "verdict.findings[2].severity: expected one"
                                        + " of voids, bars-negative, caution, found 'mild'"),
                        wrong(
                                "'limit':{'holds':'in-extract',",
                                "'limit':{",
                                "method.limit.holds: is missing; expected" + " one of in-extract, in-sample"))
                .toList();
    }

    private static final String LINES = "reading.strip.lines.";
    private static final String TIME = "reading.times.read: expected a UTC time such as 2026-03-01T08:00:00.000Z, ";
    private static final String STRIP = "'format':'sandwich-hook','lines':{'control':'faint','hook'";

    private static Body wrong(String from, String to, String... complaints) {
        return new Body(changed(from, to), true, List.of(complaints));
    }

    private static Body unseen(String from, String to, String... complaints) {
        return new Body(changed(from, to), false, List.of(complaints));
    }

    /** Returns a good body with the first place changed; apostrophes stand for quotation marks. */
    private static String changed(String from, String to) {
        String good = RecordedReadingJson.write(RecordedReadingJsonTest.withFaintControl())
                .canonical();
        String before = from.replace('\'', '"');
        if (!good.contains(before)) {
            throw new IllegalArgumentException("no " + before + " in " + good);
        }
        int at = good.indexOf(before);
        return good.substring(0, at) + to.replace('\'', '"') + good.substring(at + before.length());
    }
}
