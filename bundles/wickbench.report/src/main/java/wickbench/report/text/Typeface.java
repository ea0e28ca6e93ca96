package wickbench.report.text;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The typefaces that travel with this bundle: DejaVu, under its own free licence. */
public enum Typeface {
    PLAIN("DejaVuSans.ttf"),
    BOLD("DejaVuSans-Bold.ttf"),
    /** All characters of one width, for hashes. */
    FIXED("DejaVuSansMono.ttf");

    private static final String FOLDER = "/fonts/net/sf/jasperreports/fonts/dejavu/";

    private final String file;

    Typeface(String file) {
        this.file = file;
    }

    /** Opens the TrueType file. */
    public InputStream open() {
        InputStream bytes = Typeface.class.getResourceAsStream(FOLDER + file);
        if (bytes == null) {
            throw new IllegalStateException("this bundle lacks " + file);
        }
        return bytes;
    }

    /** Loads it for drawing on screen, one point high. */
    public Font load() {
        try (InputStream bytes = open()) {
            return Font.createFont(Font.TRUETYPE_FONT, bytes);
        } catch (FontFormatException e) {
            throw new IllegalStateException("this bundle's " + file + " is broken", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
