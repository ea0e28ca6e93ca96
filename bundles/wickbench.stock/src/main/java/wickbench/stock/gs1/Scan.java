package wickbench.stock.gs1;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What a text says. */
public sealed interface Scan {

    /**
     * Everything in it is certain.
     *
     * @param elements in the order in which they stand
     * @param year of today, by which the century of dates is told
     */
    record Read(List<Element> elements, int year) implements Scan {
        public Read {
            elements = List.copyOf(elements);
        }

        public Optional<String> value(Identifier identifier) {
            return elements.stream()
                    .filter(each -> each.identifier() == identifier)
                    .map(Element::value)
                    .findFirst();
        }

        /** Returns a date of the text. */
        public Optional<LocalDate> date(Identifier identifier) {
            return value(identifier).flatMap(digits -> ShortDate.read(digits, year));
        }
    }

    /**
     * It could mean more than one thing, so somebody must be asked.
     *
     * @param elements what is certain all the same
     */
    record Doubtful(List<Element> elements, List<Doubt> doubts) implements Scan {
        public Doubtful {
            elements = List.copyOf(elements);
            doubts = List.copyOf(doubts);
        }
    }

    /** It is no element string, or a wrong one. */
    record Refused(Doubt reason) implements Scan {}
}
