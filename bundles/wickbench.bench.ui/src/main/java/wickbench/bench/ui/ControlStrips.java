package wickbench.bench.ui;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.lot.LotId;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.api.reading.DueControl;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Times;
import wickbench.bench.run.RunStrip;
import wickbench.reading.ReadingWords;

/** Strips for run controls, made at the bench: their tube is named after what they are. */
final class ControlStrips {
    static final Times NONE =
            new Times(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    private ControlStrips() {}

    static RunStrip of(DueControl due, Method method, PersonId by) {
        return of(sample(due.control()), method, due.lot(), by);
    }

    static RunStrip of(Sample control, Method method, LotId lot, PersonId by) {
        return RunStrip.of(
                1,
                method,
                new Reading(
                        control,
                        method.ref().id(),
                        method.route(),
                        lot,
                        by,
                        Optional.empty(),
                        NONE,
                        RunStrip.unseen(method),
                        Optional.empty(),
                        Map.of(),
                        new Reading.Origin.Bench()),
                Optional.empty(),
                false);
    }

    static Sample sample(RunControl control) {
        return new Sample(
                ReadingWords.text(control),
                FlowWords.get("control.place"),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Reason.CONTROL),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                BigDecimal.ONE,
                Optional.of(control));
    }

    /** Tells of due controls in words, such as {@code Blank (nut-swab, L77)}. */
    static String words(List<DueControl> due) {
        return String.join(
                ", ",
                due.stream()
                        .map(one ->
                                FlowWords.get("control.due", ReadingWords.text(one.control()), one.method(), one.lot()))
                        .toList());
    }
}
