package wickbench.bench.ui;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.lot.LotId;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.api.planned.PlannedTest;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Sample;
import wickbench.bench.run.RunStrip;

/**
 * Strips for what a programme makes due, filled in from what it knows of each sample.
 *
 * @param strips ready to be run
 * @param without tests whose method is not in force, or of whose kit no lot is at hand
 */
record DueStrips(List<RunStrip> strips, int without) {

    /** A test with the lot from which its strip would be taken now, where one is fit. */
    record Asked(PlannedTest test, Optional<LotId> lot) {}

    /** Asks for the tests and for a lot of each one's kit; not on the UI thread. */
    static List<Asked> ask(String key, BenchDoors doors, Choices choices) {
        LotsInReach lots = new LotsInReach(doors);
        return doors.planned().stream()
                .flatMap(planned -> planned.of(key).stream())
                .map(test -> new Asked(
                        test,
                        choices.method(test.method().value()).map(Method::kit).flatMap(lots::first)))
                .toList();
    }

    /** @param typed the lot that stands on the form, for kits of which no stock is kept */
    static DueStrips of(List<Asked> all, Choices choices, Optional<LotId> typed, PersonId by) {
        List<RunStrip> strips = new ArrayList<>();
        for (Asked asked : all) {
            Optional<LotId> lot = asked.lot().or(() -> typed);
            choices.method(asked.test().method().value())
                    .ifPresent(method -> lot.ifPresent(from -> strips.add(strip(asked.test(), method, from, by))));
        }
        return new DueStrips(strips, all.size() - strips.size());
    }

    /** Returns the lot that was typed, if it can be one. */
    static Optional<LotId> lot(String typed) {
        try {
            return typed.isBlank() ? Optional.empty() : Optional.of(new LotId(typed.strip()));
        } catch (IllegalArgumentException none) {
            return Optional.empty();
        }
    }

    private static RunStrip strip(PlannedTest test, Method method, LotId lot, PersonId by) {
        Sample sample = new Sample(
                test.code(),
                test.place(),
                test.line(),
                Optional.empty(),
                Optional.of(test.reason()),
                test.reasonText(),
                Optional.empty(),
                Optional.empty(),
                BigDecimal.ONE,
                Optional.empty());
        return RunStrip.of(
                1,
                method,
                new Reading(
                        sample,
                        method.ref().id(),
                        method.route(),
                        lot,
                        by,
                        Optional.empty(),
                        ControlStrips.NONE,
                        RunStrip.unseen(method),
                        Optional.empty(),
                        Map.of(),
                        new Reading.Origin.Bench()),
                Optional.empty(),
                false);
    }
}
