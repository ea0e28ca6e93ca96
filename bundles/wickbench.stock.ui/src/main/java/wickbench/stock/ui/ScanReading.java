package wickbench.stock.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wickbench.stock.StockTerms;
import wickbench.stock.gs1.Doubt;
import wickbench.stock.gs1.Element;
import wickbench.stock.gs1.ElementStrings;
import wickbench.stock.gs1.Identifier;
import wickbench.stock.gs1.Scan;
import wickbench.stock.gs1.ShortDate;

/**
 * What a scanned text means, before anything is recorded.
 *
 * @param text as it is kept with the delivery; empty when it is not certain
 * @param elements what is certain of it
 * @param doubts what must be asked
 */
record ScanReading(Optional<String> text, List<Element> elements, List<Doubt> doubts, int year) {
    private static final char SEPARATOR = 29;
    private static final char SEEN_SEPARATOR = '\u241d';

    ScanReading {
        elements = List.copyOf(elements);
        doubts = List.copyOf(doubts);
    }

    /** Reads a text as typed or sent by a scanner; a separator may be shown by its sign. */
    static ScanReading of(String typed, int year) {
        String text = typed.strip().replace(SEEN_SEPARATOR, SEPARATOR);
        Scan scan = ElementStrings.parse(text, year);
        if (scan instanceof Scan.Read read) {
            return new ScanReading(
                    Optional.of(text.replace(SEPARATOR, SEEN_SEPARATOR)), read.elements(), List.of(), year);
        }
        if (scan instanceof Scan.Doubtful doubtful) {
            return new ScanReading(Optional.empty(), doubtful.elements(), doubtful.doubts(), year);
        }
        return new ScanReading(Optional.empty(), List.of(), List.of(((Scan.Refused) scan).reason()), year);
    }

    boolean certain() {
        return doubts.isEmpty();
    }

    Optional<String> gtin() {
        return value(Identifier.GTIN);
    }

    Optional<String> lot() {
        return value(Identifier.LOT);
    }

    Optional<String> serial() {
        return value(Identifier.SERIAL);
    }

    Optional<LocalDate> produced() {
        return date(Identifier.PRODUCED);
    }

    /** Returns the last day of use; a best-before date does where there is no expiry. */
    Optional<LocalDate> expiry() {
        return date(Identifier.EXPIRY).or(() -> date(Identifier.BEST_BEFORE));
    }

    private Optional<String> value(Identifier identifier) {
        return elements.stream()
                .filter(each -> each.identifier() == identifier)
                .map(Element::value)
                .findFirst();
    }

    private Optional<LocalDate> date(Identifier identifier) {
        return value(identifier).flatMap(digits -> ShortDate.read(digits, year));
    }

    /** Returns what it says, a line for each element: what it is, and what it means. */
    List<String> lines() {
        return elements.stream()
                .map(each -> StockUiWords.get(
                        "scan.line",
                        each.identifier().digits(),
                        StockUiWords.get("scan.is." + each.identifier().code()),
                        meaning(each)))
                .toList();
    }

    private String meaning(Element element) {
        return element.identifier().dated()
                ? ShortDate.read(element.value(), year).map(LocalDate::toString).orElse(element.value())
                : element.value();
    }

    /** Returns what is asked, in words. */
    List<String> questions() {
        return doubts.stream().map(StockTerms::doubt).toList();
    }
}
