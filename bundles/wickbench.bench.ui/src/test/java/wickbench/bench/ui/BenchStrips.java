package wickbench.bench.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import wickbench.api.lot.LotId;
import wickbench.api.method.Method;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Times;
import wickbench.bench.run.RunStrip;
import wickbench.reading.MethodJson;

/** Strips by a method of the demonstration, with other times than its own. */
final class BenchStrips {
    private BenchStrips() {}

    static RunStrip strip(int number, Duration develop, Duration window) {
        Method method = hazelnutRinse();
        Reading unread = new Reading(
                new Sample(
                        "s-" + number,
                        "kettle",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        BigDecimal.ONE,
                        Optional.empty()),
                method.ref().id(),
                method.route(),
                new LotId("hz-1"),
                TestHouse.ACTOR,
                Optional.empty(),
                new Times(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
                RunStrip.unseen(method),
                Optional.empty(),
                Map.of(),
                new Reading.Origin.Bench());
        return new RunStrip(number, unread, develop, window, Optional.empty(), false);
    }

    private static Method hazelnutRinse() {
        Path file = TestHouse.DEMO.resolve("methods/hazelnut-rinse.json");
        try {
            return MethodJson.read(file.toString(), Files.readString(file)).orRefuse();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
