package wickbench.stock.gs1;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Parses what a scanner sent or what somebody typed from a label.
 *
 * <p>Separators (FNC1) are ASCII 29, its picture {@code ␝} or the four characters {@code \x1d}; a symbology identifier
 * ({@code ]C1 ]d2 ]Q3 ]e0}) may stand first. Brackets around the identifiers make separators needless. Where a text without any
 * separator holds a value in which another identifier could begin, it is doubtful: a scanner may have swallowed the separator.
 */
public final class ElementStrings {
    /** Longer than any symbol of the standard can hold of these identifiers. */
    public static final int LONGEST = 400;

    static final char SEPARATOR = 29;
    /** Not what the platform calls blank: that would take a separator at the end away. */
    private static final Pattern AROUND = Pattern.compile("^[ \\t\\r\\n]+|[ \\t\\r\\n]+$");

    private static final Pattern SYMBOLOGY = Pattern.compile("^\\](C1|d2|Q3|e0)");
    private static final Pattern BRACKETED = Pattern.compile("\\((\\d{2,4})\\)");
    private static final Pattern ALLOWED = Pattern.compile("(?:" + Identifier.CHARACTERS + "|\\x1d)*");

    private ElementStrings() {}

    /**
     * @param text as it came, blanks around it aside
     * @param year of today
     */
    public static Scan parse(String text, int year) {
        if (text.length() > LONGEST) {
            return refused("too-long", LONGEST - 1, String.valueOf(text.length()));
        }
        String clean = AROUND.matcher(text)
                .replaceAll("")
                .replace('\u241d', SEPARATOR)
                .replaceAll("\\\\[xX]1[dD]", String.valueOf(SEPARATOR));
        String body = SYMBOLOGY.matcher(clean).replaceFirst("");
        if (body.isEmpty()) {
            return refused("empty", 0, "");
        }
        if (!ALLOWED.matcher(body).matches()) {
            return character(body);
        }
        return new Reader(year).read(body);
    }

    private static Scan character(String body) {
        int at = 0;
        while (ALLOWED.matcher(body.substring(at, at + 1)).matches()) {
            at++;
        }
        return refused("character", at, String.format("U+%04X", body.codePointAt(at)));
    }

    static Scan refused(String code, int at, String fact) {
        return new Scan.Refused(new Doubt(code, at, printable(fact)));
    }

    private static String printable(String fact) {
        return fact.replace(SEPARATOR, '\u241d');
    }

    /** One parse. */
    private static final class Reader {
        private final int year;
        private final Map<Identifier, Element> found = new EnumMap<>(Identifier.class);
        private final List<Element> inOrder = new ArrayList<>();
        private final List<Doubt> doubts = new ArrayList<>();

        Reader(int year) {
            this.year = year;
        }

        Scan read(String body) {
            Scan.Refused wrong = body.startsWith("(") ? bracketed(body) : plain(body);
            if (wrong != null) {
                return wrong;
            }
            return doubts.isEmpty() ? new Scan.Read(inOrder, year) : new Scan.Doubtful(inOrder, doubts);
        }

        private Scan.Refused plain(String body) {
            boolean separated = body.indexOf(SEPARATOR) >= 0;
            int at = body.charAt(0) == SEPARATOR ? 1 : 0;
            Scan.Refused wrong = null;
            while (wrong == null && at < body.length()) {
                var identifier = Identifier.at(body, at);
                if (identifier.isEmpty()) {
                    return unknown(body, at);
                }
                int from = at + identifier.get().digits().length();
                int to = end(identifier.get(), body, from);
                String value = body.substring(Math.min(from, to), to);
                boolean doubtful = identifier.get().variable() && !separated && hides(identifier.get(), value);
                wrong = doubtful ? doubt(at, value) : take(identifier.get(), value, at);
                at = to < body.length() && body.charAt(to) == SEPARATOR ? to + 1 : to;
            }
            return wrong;
        }

        private static int end(Identifier identifier, String body, int from) {
            if (!identifier.variable()) {
                return Math.min(body.length(), from + identifier.length());
            }
            int separator = body.indexOf(SEPARATOR, from);
            return separator < 0 ? body.length() : separator;
        }

        private Scan.Refused bracketed(String body) {
            Matcher matcher = BRACKETED.matcher(body);
            Scan.Refused wrong = null;
            boolean more = matcher.find();
            while (wrong == null && more) {
                int at = matcher.start();
                String digits = matcher.group(1);
                int from = matcher.end();
                more = matcher.find();
                String value = body.substring(from, more ? matcher.start() : body.length())
                        .replace(String.valueOf(SEPARATOR), "");
                var identifier =
                        Identifier.at(digits, 0).filter(each -> each.digits().equals(digits));
                wrong = identifier.isEmpty() ? unknown(body, at + 1) : take(identifier.get(), value, at);
            }
            return wrong == null && inOrder.isEmpty() ? unknown(body, 0) : wrong;
        }

        private Scan.Refused take(Identifier identifier, String value, int at) {
            String code = wrong(identifier, value);
            if (!code.isEmpty()) {
                return said(code, at, identifier.digits() + value);
            }
            Element element = new Element(identifier, value);
            Element before = found.putIfAbsent(identifier, element);
            if (before != null && !before.equals(element)) {
                return said("twice", at, identifier.digits());
            }
            if (before == null) {
                inOrder.add(element);
            }
            return null;
        }

        private String wrong(Identifier identifier, String value) {
            if (!identifier.allows(value)) {
                return "form";
            }
            if (identifier == Identifier.GTIN && !CheckDigit.right(value)) {
                return "check-digit";
            }
            return identifier.dated() && ShortDate.read(value, year).isEmpty() ? "date" : "";
        }

        private Scan.Refused doubt(int at, String value) {
            doubts.add(new Doubt("separator", at, value));
            return null;
        }

        /** Tells whether from some place on the value could be another element, or several. */
        private boolean hides(Identifier identifier, String value) {
            if (!identifier.allows(value)) {
                // too long for one element: then for certain there are more, and nobody knows where they begin
                return true;
            }
            for (int from = 1; from < value.length(); from++) {
                if (elements(value, from)) {
                    return true;
                }
            }
            return false;
        }

        private boolean elements(String text, int at) {
            return Identifier.at(text, at)
                    .filter(identifier -> element(identifier, text, at + 2))
                    .isPresent();
        }

        private boolean element(Identifier identifier, String text, int from) {
            int to = end(identifier, text, from);
            boolean whole =
                    from < to && wrong(identifier, text.substring(from, to)).isEmpty();
            return whole && (to == text.length() || elements(text, to));
        }

        private Scan.Refused unknown(String body, int at) {
            return said("unknown", at, body.substring(at, Math.min(body.length(), at + 4)));
        }

        private static Scan.Refused said(String code, int at, String fact) {
            return new Scan.Refused(new Doubt(code, at, printable(fact)));
        }
    }
}
