package wickbench.api.lot;

/**
 * A lot number as printed on the kit.
 *
 * @param value 1 to 40 visible characters
 */
public record LotId(String value) {
    private static final int LONGEST = 40;

    public LotId {
        if (value.isBlank() || value.length() > LONGEST || holdsControl(value)) {
            throw new IllegalArgumentException(
                    "expected a lot number of 1 to 40 visible characters, found '" + value + "'");
        }
    }

    /** A plain loop, for lists are read by the million. */
    private static boolean holdsControl(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (Character.isISOControl(text.charAt(i))) {
                return true;
            }
        }
        return false;
    }

    @Override
    public String toString() {
        return value;
    }
}
