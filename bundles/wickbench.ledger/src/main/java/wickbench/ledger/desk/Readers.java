package wickbench.ledger.desk;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reading.SecondReading;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.Statement;

/** Who had a hand in a result, as the journal says of every statement of it. */
final class Readers {
    private Readers() {}

    /** Returns who ran or read the strip: operator, observer, second reader. */
    static Set<PersonId> of(ResultDetail detail) {
        return detail.history().stream()
                .map(statement -> statement.reading().reading())
                .flatMap(Readers::of)
                .collect(Collectors.toUnmodifiableSet());
    }

    private static Stream<PersonId> of(Reading reading) {
        return Stream.of(
                        Stream.of(reading.operator()),
                        reading.observer().stream(),
                        reading.second().map(SecondReading::reader).stream())
                .flatMap(each -> each);
    }

    /** Returns who corrected it. */
    static Set<PersonId> correctors(ResultDetail detail) {
        return detail.history().stream()
                .filter(statement -> statement.reason().isPresent())
                .map(Statement::entry)
                .map(entry -> entry.by())
                .collect(Collectors.toUnmodifiableSet());
    }
}
