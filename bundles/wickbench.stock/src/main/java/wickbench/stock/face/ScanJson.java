package wickbench.stock.face;

import java.time.LocalDate;
import java.util.List;
import wickbench.api.json.Json;
import wickbench.stock.StockTerms;
import wickbench.stock.gs1.Doubt;
import wickbench.stock.gs1.Element;
import wickbench.stock.gs1.Scan;
import wickbench.stock.gs1.ShortDate;

/** What a scanned text says, for machines and people. */
final class ScanJson {
    private ScanJson() {}

    static Json.Obj of(Scan scan, int year) {
        if (scan instanceof Scan.Read read) {
            return elements("read", read.elements(), year);
        }
        if (scan instanceof Scan.Doubtful doubtful) {
            return elements("doubtful", doubtful.elements(), year)
                    .with(
                            "doubts",
                            Json.array(doubtful.doubts().stream()
                                    .map(ScanJson::doubt)
                                    .toList()));
        }
        return Json.object()
                .with("answer", "refused")
                .with("doubts", Json.array(List.of(doubt(((Scan.Refused) scan).reason()))));
    }

    private static Json.Obj elements(String answer, List<Element> elements, int year) {
        Json.Obj found = Json.object();
        for (Element each : elements) {
            String value = each.identifier().dated()
                    ? ShortDate.read(each.value(), year)
                            .map(LocalDate::toString)
                            .orElse(each.value())
                    : each.value();
            found = found.with(each.identifier().code().replace('-', '_'), value);
        }
        return Json.object()
                .with("answer", answer)
                .with("elements", found)
                .with(
                        "identifiers",
                        Json.texts(elements.stream()
                                .map(each -> each.identifier().digits())
                                .toList()));
    }

    private static Json.Obj doubt(Doubt doubt) {
        return Json.object()
                .with("code", doubt.code())
                .with("at", doubt.at())
                .with("found", doubt.fact())
                .with("text", text(doubt));
    }

    static String text(Doubt doubt) {
        return StockTerms.doubt(doubt);
    }
}
