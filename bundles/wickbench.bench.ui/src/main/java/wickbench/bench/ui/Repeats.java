package wickbench.bench.ui;

import java.math.BigDecimal;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Sample;
import wickbench.bench.run.RunStrip;

/** Another strip from the same extract: the same sample, as thin or thinner. */
final class Repeats {
    private Repeats() {}

    static RunStrip of(RunStrip strip, BigDecimal thinner) {
        Reading first = strip.unread();
        Sample from = first.sample();
        Sample sample = new Sample(
                from.code(),
                from.place(),
                from.line(),
                from.batch(),
                from.reason(),
                from.reasonText(),
                from.visual(),
                from.area(),
                from.dilution().multiply(thinner),
                from.control());
        return new RunStrip(
                strip.number(),
                new Reading(
                        sample,
                        first.method(),
                        first.route(),
                        first.lot(),
                        first.operator(),
                        first.observer(),
                        first.times(),
                        first.strip(),
                        first.second(),
                        first.preChecks(),
                        first.origin()),
                strip.develop(),
                strip.window(),
                strip.clean(),
                strip.drawn());
    }
}
