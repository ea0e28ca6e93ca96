package wickbench.bench;

import java.util.Locale;
import java.util.Map;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Visual;
import wickbench.api.words.Coded;

/** The choices of a sheet, in the words people write for them. */
final class SheetChoices {
    private static final Map<String, Visual> VISUAL_WORDS =
            Map.of("pass", Visual.CLEAN, "ok", Visual.CLEAN, "fail", Visual.SOILED, "dirty", Visual.SOILED);
    private static final Map<String, RunControl> CONTROL_WORDS =
            Map.of("negative", RunControl.BLANK, "positive", RunControl.LOW_POSITIVE);

    private SheetChoices() {}

    static Visual visual(String text) {
        String code = code(text);
        Visual word = VISUAL_WORDS.get(code);
        return word == null ? Coded.of(Visual.class, code) : word;
    }

    static RunControl control(String text) {
        String code = code(text);
        RunControl word = CONTROL_WORDS.get(code);
        return word == null ? Coded.of(RunControl.class, code) : word;
    }

    /** Returns the known reason, or {@link Reason#OTHER} for the site's own words. */
    static Reason reason(String text) {
        String code = code(text);
        for (Reason reason : Reason.values()) {
            if (reason.code().equals(code)) {
                return reason;
            }
        }
        return Reason.OTHER;
    }

    static String code(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replaceAll("[ _]+", "-");
    }
}
