package wickbench.api.lot;

/**
 * A lot number as printed on the kit.
 *
 * @param value 1 to 40 visible characters
 */
public record LotId(String value) {
    private static final int LONGEST = 40;

    public LotId {
        if (value.isBlank() || value.length() > LONGEST || value.chars().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException(
                    "expected a lot number of 1 to 40 visible characters, found '" + value + "'");
        }
    }

    @Override
    public String toString() {
        return value;
    }
}
