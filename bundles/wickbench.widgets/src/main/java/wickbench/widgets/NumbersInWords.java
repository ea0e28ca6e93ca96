package wickbench.widgets;

import java.math.BigInteger;

/** Compares texts as people do: "P-9" before "P-10", case aside. */
final class NumbersInWords {
    private NumbersInWords() {}

    static int compare(String left, String right) {
        int l = 0;
        int r = 0;
        while (l < left.length() && r < right.length()) {
            int lEnd = end(left, l);
            int rEnd = end(right, r);
            int order = compareParts(left.substring(l, lEnd), right.substring(r, rEnd));
            if (order != 0) {
                return order;
            }
            l = lEnd;
            r = rEnd;
        }
        return Integer.compare(left.length() - l, right.length() - r);
    }

    private static int compareParts(String left, String right) {
        if (digit(left.charAt(0)) && digit(right.charAt(0))) {
            return new BigInteger(left).compareTo(new BigInteger(right));
        }
        return left.compareToIgnoreCase(right);
    }

    /** Returns where the run of digits ends, or of anything else. */
    private static int end(String text, int from) {
        int at = from;
        while (at < text.length() && digit(text.charAt(at)) == digit(text.charAt(from))) {
            at++;
        }
        return at;
    }

    private static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }
}
