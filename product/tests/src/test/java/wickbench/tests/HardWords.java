package wickbench.tests;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds words for people that stand in a source instead of a message file.
 *
 * <p>Two rules, neither of which needs to know what a class is for. What is handed to a call that shows text, as it is or with something
 * added, holds no word: a literal that is handed to a call in between is a key, and not looked at. And where windows and the command
 * line are made, no literal has two words in a row, except in what a broken program throws, in annotations, and in patterns of times.
 */
final class HardWords {
    /** What stands before the arguments of a call whose text people read as it is. */
    private static final Pattern SETTING = Pattern.compile(".*\\b(setText|setToolTipText|setMessage|setTitle)\\s*\\($");

    /** The same of calls that may also take the key of what they say. */
    private static final Pattern SAYING = Pattern.compile(".*\\b(say|line|println|print)\\s*\\($");

    private static final Pattern KEY = Pattern.compile("\"[a-z0-9]+([._-][a-z0-9]+)*\"");

    /** Of a refusal people read what follows the code. */
    private static final Pattern REFUSING = Pattern.compile(".*\\bnew Refusal\\s*\\($");

    private static final String LITERAL = "\"\"\".*?\"\"\"|\"(?:[^\"\\\\\\n]|\\\\.)*\"|'(?:[^'\\\\]|\\\\.)[^']{0,4}'";
    private static final Pattern LITERAL_OR_COMMENT =
            Pattern.compile(LITERAL + "|//[^\\n]*|/\\*.*?\\*/", Pattern.DOTALL);
    private static final Pattern ESCAPE = Pattern.compile("\\\\u[0-9a-fA-F]{4}|\\\\.");
    private static final Pattern WORD = Pattern.compile("\\p{L}{3,}");
    private static final Pattern TWO_WORDS = Pattern.compile("\\p{L}{2,}['\u2019]?\\p{L}*[,:]? +\\p{L}{2,}");
    private static final Pattern THROWN = Pattern.compile("new \\w*(Exception|Error)\\s*\\(|@\\w+\\s*\\(");
    private static final Pattern TIMES = Pattern.compile("[uyMdHhmsSx' :.\\[\\]-]+");

    private final String source;
    private final List<Literal> literals = new ArrayList<>();
    private final BitSet quoted = new BitSet();

    private record Literal(int from, int to) {}

    private HardWords(String source) {
        this.source = source;
        Matcher each = LITERAL_OR_COMMENT.matcher(source);
        while (each.find()) {
            quoted.set(each.start(), each.end());
            if (source.charAt(each.start()) == '"') {
                literals.add(new Literal(each.start(), each.end()));
            }
        }
    }

    /**
     * Returns what is found, as {@code LINE: LITERAL}.
     *
     * @param spoken whether windows or the command line are made here, so that the second rule holds too
     */
    static List<String> in(String source, boolean spoken) {
        HardWords words = new HardWords(source);
        return words.literals.stream()
                .filter(literal -> words.isShown(literal) || spoken && words.isSentence(literal))
                .map(literal -> source.substring(0, literal.to()).lines().count() + ": " + words.text(literal))
                .toList();
    }

    private String text(Literal literal) {
        return source.substring(literal.from(), literal.to());
    }

    private boolean hasIn(Pattern pattern, Literal literal) {
        return pattern.matcher(ESCAPE.matcher(text(literal)).replaceAll(" ")).find();
    }

    private boolean isShown(Literal literal) {
        int open = hasIn(WORD, literal) ? opening(literal.from()) : -1;
        if (open < 0) {
            return false;
        }
        String call = source.substring(source.lastIndexOf('\n', open) + 1, open + 1);
        return SETTING.matcher(call).matches()
                || SAYING.matcher(call).matches() && !KEY.matcher(text(literal)).matches()
                || REFUSING.matcher(call).matches()
                        && source.substring(open, literal.from()).contains(",");
    }

    private boolean isSentence(Literal literal) {
        String inside = text(literal).replace("\"", "");
        return hasIn(TWO_WORDS, literal)
                && !TIMES.matcher(inside).matches()
                && !THROWN.matcher(statement(literal.from())).find();
    }

    /** Returns where the call around a place opens, or -1; a parenthesis that only groups is looked through. */
    private int opening(int from) {
        int closed = 0;
        for (int at = from - 1; at > 0; at--) {
            char c = quoted.get(at) ? ' ' : source.charAt(at);
            if (";{}".indexOf(c) >= 0) {
                return -1;
            }
            if (c == ')') {
                closed++;
            } else if (c == '(' && closed > 0) {
                closed--;
            } else if (c == '(' && Character.isJavaIdentifierPart(source.charAt(at - 1))) {
                return at;
            }
        }
        return -1;
    }

    private String statement(int from) {
        int at = from - 1;
        while (at >= 0 && (quoted.get(at) || ";{}".indexOf(source.charAt(at)) < 0)) {
            at--;
        }
        return source.substring(at + 1, from);
    }
}
