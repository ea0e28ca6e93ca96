package wickbench.report.text;

import java.awt.Font;

/** The fonts that charts and strips are drawn with, loaded once for all who draw. */
public record ScreenFonts(Font plain, Font bold) {

    public static ScreenFonts load() {
        return new ScreenFonts(Typeface.PLAIN.load(), Typeface.BOLD.load());
    }

    public Font plain(double size) {
        return plain.deriveFont((float) size);
    }

    public Font bold(double size) {
        return bold.deriveFont((float) size);
    }

    /** Returns how names in drawings are made visible. */
    public Visible visible() {
        return new Visible(plain::canDisplay);
    }
}
