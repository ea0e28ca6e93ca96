package wickbench.api.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Numbers as people read them: with the signs of their language.
 *
 * <p>In files the sign is a point: what stood on the screen goes into one by {@link #pointed}.
 */
public final class Decimals {
    private static final char POINT = '.';
    private static final Pattern PLAIN = Pattern.compile("-?[0-9]{1,40}\\.[0-9]{1,40}");
    private static final Pattern SHOWN = Pattern.compile("-?[0-9]{1,40}[^0-9][0-9]{1,40}");

    private Decimals() {}

    /** Returns all digits of the value, without an exponent. */
    public static String of(BigDecimal value) {
        return signed(value.toPlainString());
    }

    /** Returns the value with so many digits after the sign, rounded half up; what is no number is written as Java names it. */
    public static String of(double value, int places) {
        return Double.isFinite(value)
                ? of(BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP))
                : Double.toString(value);
    }

    /** Returns a whole number in groups of three digits, as a person counts them; not for files, ids and years. */
    public static String grouped(long number) {
        return String.format("%,d", number);
    }

    /** Puts the decimal sign of the language into a number that is written with a point. */
    public static String signed(String number) {
        return number.replace(POINT, sign());
    }

    /** Returns a text that is a number as {@link #signed} makes them with a point, as files hold it, and any other as it is. */
    public static String pointed(String shown) {
        return SHOWN.matcher(shown).matches() && shown.indexOf(sign()) >= 0 ? shown.replace(sign(), POINT) : shown;
    }

    /** Returns a text that is a number with a point with the sign of the language, for a field, and any other as it is. */
    public static String shown(String text) {
        return PLAIN.matcher(text).matches() ? signed(text) : text;
    }

    private static char sign() {
        return DecimalFormatSymbols.getInstance(Locale.getDefault()).getDecimalSeparator();
    }
}
