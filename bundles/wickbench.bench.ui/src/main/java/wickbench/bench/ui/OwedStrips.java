package wickbench.bench.ui;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Times;
import wickbench.api.words.Coded;
import wickbench.bench.run.RunStrip;

/** Strips that do what is owed, filled in from the reading because of which it is. */
final class OwedStrips {
    private final Choices choices;
    private final PersonId by;

    OwedStrips(Choices choices, PersonId by) {
        this.choices = choices;
        this.by = by;
    }

    /** Returns none when its method is not in force any more. */
    List<RunStrip> of(OwedFirst owed) {
        return samples(owed.item(), owed.first().sample()).stream()
                .flatMap(sample -> strip(owed, sample).stream())
                .toList();
    }

    private List<Sample> samples(OwedItem item, Sample first) {
        return switch (item.step()) {
            case RUN_CONTROL ->
                item.missing().stream()
                        .map(code -> ControlStrips.sample(Coded.of(RunControl.class, code)))
                        .toList();
            case REPEAT_SAME_EXTRACT, REPEAT_CONTROL, REPEAT_AFTER_CONTROL -> List.of(first);
            case REPEAT_NEW_SAMPLE -> List.of(taken(first, first.place(), label(item, 1), first.reason()));
            case REPEAT_DILUTED, BRACKET ->
                item.missing().stream()
                        .map(times -> thinner(first, new BigDecimal(times)))
                        .toList();
            case RE_TEST -> again(item, first);
            case HOLD, RE_CLEAN, STOP_AND_CALL_QUALITY, DECIDE -> List.of();
        };
    }

    private static List<Sample> again(OwedItem item, Sample first) {
        List<Sample> samples = new ArrayList<>();
        for (String place : item.missing()) {
            samples.add(taken(first, place, label(item, samples.size() + 1), Optional.of(Reason.AFTER_CLEANING)));
        }
        return samples;
    }

    /** A new tube needs a label that none of the tubes before it had. */
    private static String label(OwedItem item, int number) {
        return item.sample() + "-R" + (item.answers().size() + number);
    }

    private Optional<RunStrip> strip(OwedFirst owed, Sample sample) {
        Reading first = owed.first();
        boolean sameTube = sample.code().equals(first.sample().code());
        Times times = new Times(
                first.times().outOfFridge(),
                first.times().extracted(),
                first.times().shaken(),
                Optional.empty(),
                Optional.empty());
        return choices.method(first.method().value())
                .map(method -> RunStrip.of(
                        1,
                        method,
                        new Reading(
                                sample,
                                method.ref().id(),
                                method.route(),
                                owed.lot(),
                                by,
                                Optional.empty(),
                                sameTube && !control(owed) ? times : ControlStrips.NONE,
                                RunStrip.unseen(method),
                                Optional.empty(),
                                sameTube ? first.preChecks() : Map.of(),
                                new Reading.Origin.Bench()),
                        Optional.empty(),
                        false));
    }

    /** A control is made anew and has no extract to come back to. */
    private static boolean control(OwedFirst owed) {
        return owed.item().step() == Step.REPEAT_CONTROL || owed.item().step() == Step.RUN_CONTROL;
    }

    private static Sample thinner(Sample first, BigDecimal times) {
        return new Sample(
                first.code(),
                first.place(),
                first.line(),
                first.batch(),
                first.reason(),
                first.reasonText(),
                first.visual(),
                first.area(),
                times,
                first.control());
    }

    private static Sample taken(Sample first, String place, String code, Optional<Reason> reason) {
        return new Sample(
                code,
                place,
                first.line(),
                first.batch(),
                reason,
                reason.equals(first.reason()) ? first.reasonText() : Optional.empty(),
                Optional.empty(),
                place.equals(first.place()) ? first.area() : Optional.empty(),
                first.dilution(),
                Optional.empty());
    }
}
