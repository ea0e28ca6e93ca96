package wickbench.training.face;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wickbench.api.journal.Hash;
import wickbench.api.words.Coded;
import wickbench.figures.sums.TableText;
import wickbench.training.PanelStrip;
import wickbench.training.StripClass;
import wickbench.training.book.TrainingWords;

/** A panel: strips or kept photographs of which experts said beforehand what they show. */
final class PanelSheet {
    /** Finer than anybody measures. */
    private static final int DECIMALS = 6;

    private PanelSheet() {}

    static List<PanelStrip> read(Path file) {
        Sheet sheet = Sheet.read(file, List.of("item", "class"), List.of("line", "photograph", "contrast"));
        List<PanelStrip> strips = new ArrayList<>();
        for (TableText.Line line : sheet.lines()) {
            Optional<String> item = sheet.asked(line, "item", text -> text);
            Optional<StripClass> kind =
                    sheet.asked(line, "class", text -> Coded.of(StripClass.class, text.toLowerCase(Locale.ROOT)));
            Optional<Boolean> seen = sheet.optional(line, "line", PanelSheet::line);
            Optional<Hash> photograph = sheet.optional(line, "photograph", Hash::new);
            Optional<BigDecimal> contrast = sheet.optional(line, "contrast", PanelSheet::contrast);
            if (item.isPresent() && kind.isPresent()) {
                strips.add(new PanelStrip(item.get(), kind.get(), seen, photograph, contrast));
            }
        }
        sheet.finish();
        return strips;
    }

    private static boolean line(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "seen" -> true;
            case "not-seen" -> false;
            default -> throw new IllegalArgumentException(TrainingWords.get("panel.seen", text));
        };
    }

    private static BigDecimal contrast(String text) {
        BigDecimal percent = number(text);
        if (percent.signum() < 0 || percent.compareTo(PanelStrip.MOST_CONTRAST) > 0 || percent.scale() > DECIMALS) {
            throw new IllegalArgumentException(TrainingWords.get("panel.contrast", text));
        }
        return percent;
    }

    private static BigDecimal number(String text) {
        try {
            return new BigDecimal(text.replace(',', '.'));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(TrainingWords.get("panel.contrast", text), e);
        }
    }

    static Map<StripClass, Integer> counts(List<PanelStrip> strips) {
        Map<StripClass, Integer> counts = new EnumMap<>(StripClass.class);
        strips.forEach(strip -> counts.merge(strip.kind(), 1, Integer::sum));
        return counts;
    }
}
