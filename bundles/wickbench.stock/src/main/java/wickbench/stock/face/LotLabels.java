package wickbench.stock.face;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wickbench.api.check.Refusal;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.Section;
import wickbench.api.report.Section.Label;
import wickbench.api.report.Section.Symbol;
import wickbench.api.words.Coded;
import wickbench.stock.Lot;
import wickbench.stock.gs1.LabelText;
import wickbench.stock.room.StockWords;

/** Labels of a lot, for pouches that leave their box and for tubes. */
record LotLabels(List<ReportPrinter> printers, LocalDate today) {
    private static final int MOST = 1000;

    /** What they are stuck on; the sizes are common practice, no source. */
    enum On implements Coded {
        POUCH(58, 28),
        TUBE(42, 14);

        private final double width;
        private final double height;

        On(double width, double height) {
            this.width = width;
            this.height = height;
        }
    }

    /**
     * Prints labels.
     *
     * @param count how many; empty for the sealed pouches, or the tubes of one pouch
     * @throws Refusal {@code label.unusable} when nothing of the lot may be used
     */
    int write(Lot lot, On on, Optional<Integer> count, Path out) {
        int many = count.orElseGet(() -> usual(lot, on));
        if (many < 1 || many > MOST) {
            throw Typed.wrong("--count", "label.count", MOST, many);
        }
        if (!out.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            throw Typed.wrong("--pdf", "label.ending", out.getFileName());
        }
        if (!lot.state().kept() || lot.expired(today)) {
            throw new Refusal(
                    "label.unusable",
                    StockWords.get(
                            "label.unusable",
                            lot.id(),
                            StockWords.get("state." + lot.state().code()),
                            lot.effective()));
        }
        PrintedFile.write("--pdf", out, ReportPrinter.PDF, printers, report(lot, on, many));
        return many;
    }

    private static int usual(Lot lot, On on) {
        long each = on == On.POUCH
                ? lot.sealedPouches()
                : lot.strips().part().perPouch().longValue();
        return (int) Math.max(1, Math.min(MOST, each));
    }

    private static Report report(Lot lot, On on, int many) {
        List<Label> labels = new ArrayList<>();
        for (int number = 1; number <= many; number++) {
            labels.add(label(lot, on == On.POUCH ? pouch(lot, number, many) : tube(lot)));
        }
        return new Report(
                StockWords.get("label.title", lot.id()),
                List.of(new Section.Labels(on.width, on.height, labels)),
                List.of());
    }

    /** A trade item number makes it a GS1 label; what has none, or a longer lot number, says its lot as it stands. */
    private static Label label(Lot lot, List<String> lines) {
        Optional<String> elements = lot.kit().gtins().stream()
                .findFirst()
                .flatMap(gtin -> LabelText.of(gtin, lot.id().value(), lot.label()));
        return elements.map(text -> new Label(Symbol.GS1_DATA_MATRIX, text, lines))
                .orElseGet(() -> new Label(Symbol.QR, lot.id().value(), lines));
    }

    private static List<String> pouch(Lot lot, int number, int many) {
        List<String> lines = new ArrayList<>(List.of(
                lot.id().value(),
                lot.kit().name(),
                StockWords.get("label.use-by", lot.effective()),
                StockWords.get("label.pouch", number, many)));
        lot.kit().pouchHours().ifPresent(hours -> lines.add(StockWords.get("label.hours", hours)));
        lines.add(StockWords.get("label.opened"));
        return lines;
    }

    private static List<String> tube(Lot lot) {
        return List.of(
                lot.id().value(), StockWords.get("label.use-by", lot.effective()), StockWords.get("label.sample"));
    }
}
