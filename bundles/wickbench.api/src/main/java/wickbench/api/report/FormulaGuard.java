package wickbench.api.report;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Keeps a spreadsheet from taking a text for a formula (OWASP, "CSV Injection"; CWE-1236), without losing a character.
 *
 * <p>The rule: a cell gets one apostrophe before it when its first character that is not blank is one of {@code = + - @}, or
 * their full-width forms, when it starts with a tab or a line break, or when it starts with an apostrophe. A plain decimal
 * number, such as -5.2, stays as it is. Reading back, one apostrophe at the start is dropped; so what went out comes back
 * exactly.
 */
public final class FormulaGuard {
    private static final String STARTS = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";
    private static final String BLANKS_THAT_START = "\t\r\n";
    private static final char APOSTROPHE = '\'';
    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?");
    /** More digits than these do not survive in a spreadsheet. */
    private static final int DIGITS = 15;

    private FormulaGuard() {}

    /** Returns the cell as it may go out. */
    public static String guarded(String cell) {
        return suspicious(cell) ? APOSTROPHE + cell : cell;
    }

    /** Returns what {@link #guarded} was given. */
    public static String original(String cell) {
        return !cell.isEmpty() && cell.charAt(0) == APOSTROPHE ? cell.substring(1) : cell;
    }

    /** Returns the number that a cell is, if a spreadsheet keeps it and writes it the same way again. */
    public static Optional<BigDecimal> number(String cell) {
        return NUMBER.matcher(cell).matches()
                ? Optional.of(new BigDecimal(cell)).filter(number -> survives(number, cell))
                : Optional.empty();
    }

    private static boolean suspicious(String cell) {
        if (cell.isEmpty() || NUMBER.matcher(cell).matches()) {
            return false;
        }
        char first = cell.charAt(0);
        return first == APOSTROPHE || BLANKS_THAT_START.indexOf(first) >= 0 || startsFormula(cell);
    }

    private static boolean startsFormula(String cell) {
        return cell.codePoints().filter(c -> !blank(c)).limit(1).anyMatch(c -> STARTS.indexOf(c) >= 0);
    }

    /** Blank or invisible: spaces of any kind, controls, and marks such as U+FEFF and U+200E. */
    private static boolean blank(int c) {
        return Character.isWhitespace(c)
                || Character.isSpaceChar(c)
                || Character.isISOControl(c)
                || Character.getType(c) == Character.FORMAT;
    }

    private static boolean survives(BigDecimal number, String cell) {
        boolean written = plain(number).equals(cell);
        return written && number.precision() <= DIGITS && number.precision() - number.scale() <= DIGITS;
    }

    /** Without trailing zeros and without a sign before zero. */
    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
