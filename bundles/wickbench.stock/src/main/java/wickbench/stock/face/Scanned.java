package wickbench.stock.face;

import java.util.Optional;
import java.util.stream.Collectors;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.stock.gs1.ElementStrings;
import wickbench.stock.gs1.Scan;

/** Takes what is certain of a scan, or asks. */
final class Scanned {
    private Scanned() {}

    /** Returns a text that leaves no doubt; empty when nothing was scanned. */
    static Optional<Scan.Read> certain(String text, int year) {
        return text == null ? Optional.empty() : Optional.of(read(text, year));
    }

    private static Scan.Read read(String text, int year) {
        Scan scan = ElementStrings.parse(text, year);
        if (scan instanceof Scan.Read read) {
            return read;
        }
        String why = scan instanceof Scan.Doubtful doubtful
                ? doubtful.doubts().stream().map(ScanJson::text).collect(Collectors.joining("; "))
                : ScanJson.text(((Scan.Refused) scan).reason());
        throw new BadInput(Complaint.of("--scan", why));
    }
}
