package wickbench.stock.gs1;

/** The check digit of GS1 numbers (General Specifications §7.9): weights 3, 1, 3, 1 … from the right-most data digit. */
public final class CheckDigit {
    private static final int TEN = 10;
    private static final int HEAVY = 3;

    private CheckDigit() {}

    /**
     * Returns the digit that belongs behind these digits.
     *
     * @throws IllegalArgumentException when there is another character
     */
    public static int of(String data) {
        int sum = 0;
        for (int i = 0; i < data.length(); i++) {
            int digit = data.charAt(data.length() - 1 - i) - '0';
            if (digit < 0 || digit >= TEN) {
                throw new IllegalArgumentException("expected digits, found '" + data + "'");
            }
            sum += i % 2 == 0 ? HEAVY * digit : digit;
        }
        return (TEN - sum % TEN) % TEN;
    }

    /** Tells whether the last digit is the check digit of those before it. */
    public static boolean right(String number) {
        int last = number.length() - 1;
        return last > 0 && of(number.substring(0, last)) == number.charAt(last) - '0';
    }
}
