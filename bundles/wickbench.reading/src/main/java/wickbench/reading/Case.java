package wickbench.reading;

import java.util.List;
import java.util.stream.Stream;
import wickbench.api.method.Method;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reading.SecondReading;
import wickbench.api.reading.Strip;

/** All that a rule may look at. */
record Case(Method method, Reading reading, Surroundings around) {
    Case {
        for (Strip strip : strips(reading)) {
            if (strip.format() != method.format()) {
                throw new IllegalArgumentException("method " + method.ref() + " is for "
                        + method.format().code() + " strips, read was a "
                        + strip.format().code());
            }
        }
    }

    /** Returns the strip as each reader saw it. */
    List<Lines> readers() {
        return strips(reading).stream()
                .map(strip -> new Lines(strip, method.faintTest()))
                .toList();
    }

    /** Returns the strip as the more cautious answer to each line has it. */
    Lines lines() {
        return readers().stream().reduce(Lines::cautious).orElseThrow();
    }

    private static List<Strip> strips(Reading reading) {
        return Stream.concat(Stream.of(reading.strip()), reading.second().map(SecondReading::strip).stream())
                .toList();
    }
}
