package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every word of the product is there in each language, and means the same to the program. A new language is added here. */
class LanguagesTest {
    private static final List<String> CODES = List.of("es");

    /** Fewer would mean that the test looks at the wrong place. */
    private static final int AT_LEAST_FILES = 40;

    /** A value put in, a doubled or single per cent of the command line's help, a variable of it. */
    private static final Pattern PLACES = Pattern.compile("\\{\\d+}|%[%n]|\\$\\{[^}]*}");

    private static final Pattern LONE_APOSTROPHE = Pattern.compile("(?<!')'(?:'')*(?!')");
    private static final Pattern MNEMONIC = Pattern.compile("&(\\p{L})");

    /** The keys of pages' titles. */
    private static final Set<String> RAIL = Set.of(
            "bench.title", "figures.title", "ledger.title", "methods.title", "page.title", "release.page", "title");

    private final MessageFiles english = MessageFiles.in(BuiltProduct.houseJars(), "");

    @Test
    void no_word_is_missing_and_none_is_left_over() {
        assertThat(english.byName()).hasSizeGreaterThanOrEqualTo(AT_LEAST_FILES);
        for (String code : CODES) {
            MessageFiles words = words(code);
            assertThat(words.byName().keySet())
                    .as(code)
                    .isEqualTo(english.byName().keySet());
            english.byName()
                    .forEach((file, spoken) -> assertThat(
                                    words.byName().get(file).keySet())
                            .as("%s in %s", file, code)
                            .isEqualTo(spoken.keySet()));
        }
    }

    @Test
    void what_is_put_in_is_the_same() {
        assertThat(differing((file, key) -> places(key.english()).equals(places(key.other()))))
                .isEmpty();
    }

    /** A pattern would swallow a lone apostrophe; the help of commands is no pattern. */
    @Test
    void apostrophes_are_doubled() {
        assertThat(differing((file, key) -> file.endsWith("/commands")
                        || !LONE_APOSTROPHE.matcher(key.other()).find()))
                .isEmpty();
    }

    @Test
    void what_has_a_letter_to_press_has_one_and_only_that() {
        assertThat(differing((file, key) ->
                        letters(key.english()).size() == letters(key.other()).size()))
                .isEmpty();
    }

    /** Three dots say that a question comes first; they stand at their word, as everywhere on a desktop. */
    @Test
    void three_dots_stand_at_their_word() {
        assertThat(english.byName().values()).allSatisfy(LanguagesTest::dotsStandAtTheirWord);
        CODES.forEach(
                code -> assertThat(words(code).byName().values()).allSatisfy(LanguagesTest::dotsStandAtTheirWord));
    }

    private static void dotsStandAtTheirWord(Map<String, String> words) {
        assertThat(words).allSatisfy((key, word) -> assertThat(word).doesNotEndWith(" …"));
    }

    /** Letters that tell two things apart in English tell them apart: those of a group of keys, and those of the rail. */
    @Test
    void letters_to_press_tell_as_much_apart() {
        List<String> clashes = new ArrayList<>();
        CODES.forEach(code -> groups(code).forEach((name, pairs) -> clashes.addAll(clashes(code + " " + name, pairs))));
        assertThat(clashes).isEmpty();
    }

    /** The sheet of keys names the letters that the drawn strip listens to. */
    @Test
    void the_sheet_of_keys_tells_the_truth() {
        for (String code : CODES) {
            Map<String, String> sheet = words(code).byName().get("wickbench.shell/shell");
            Map<String, String> strip = words(code).byName().get("wickbench.widgets/widgets");
            for (String answer : List.of("seen", "faint", "not-seen", "damaged")) {
                assertThat(sheet.get("keys.strip." + answer + ".key"))
                        .as("%s in %s", answer, code)
                        .isEqualTo(strip.get("strip.key." + answer));
            }
        }
    }

    private Map<String, List<Pair>> groups(String code) {
        Map<String, List<Pair>> groups = new TreeMap<>();
        pairs(code).forEach((place, pair) -> {
            if (!letters(pair.english()).isEmpty()) {
                groups.computeIfAbsent(group(place), name -> new ArrayList<>()).add(pair);
            }
        });
        return groups;
    }

    private static List<String> clashes(String name, List<Pair> pairs) {
        List<String> clashes = new ArrayList<>();
        for (int i = 0; i < pairs.size(); i++) {
            for (int j = 0; j < i; j++) {
                boolean apart = !letters(pairs.get(i).english())
                        .equals(letters(pairs.get(j).english()));
                if (apart
                        && letters(pairs.get(i).other())
                                .equals(letters(pairs.get(j).other()))) {
                    clashes.add(name + ": " + pairs.get(j).other() + " / "
                            + pairs.get(i).other());
                }
            }
        }
        return clashes;
    }

    /**
     * The titles of pages stand together on the rail; else what begins alike does on a page, and of keys with three parts what ends
     * alike too: {@code act.take.open} beside {@code act.count.open}, and neither beside {@code act.take.verb}.
     */
    private static String group(String place) {
        String key = place.substring(place.indexOf(' ') + 1);
        if (RAIL.contains(key)) {
            return "rail";
        }
        String[] parts = key.split("\\.");
        return place.substring(0, place.indexOf(' ') + 1)
                + parts[0]
                + (parts.length < 3 ? "" : parts[parts.length - 1]);
    }

    private record Pair(String english, String other) {}

    private List<String> differing(BiFunction<String, Pair, Boolean> alike) {
        List<String> found = new ArrayList<>();
        for (String code : CODES) {
            pairs(code).forEach((place, pair) -> {
                if (!alike.apply(place.substring(0, place.indexOf(' ')), pair)) {
                    found.add(place + ": " + pair);
                }
            });
        }
        return found;
    }

    /** All words of a language beside the English ones, by file and key. */
    private Map<String, Pair> pairs(String code) {
        Map<String, Pair> pairs = new TreeMap<>();
        words(code)
                .byName()
                .forEach((file, words) -> words.forEach((key, other) -> {
                    String spoken =
                            english.byName().getOrDefault(file, Map.of()).get(key);
                    if (spoken != null) {
                        pairs.put(file + " " + key, new Pair(spoken, other));
                    }
                }));
        return pairs;
    }

    private static MessageFiles words(String code) {
        return MessageFiles.in(BuiltProduct.languageJars(code), "_" + code);
    }

    private static TreeSet<String> letters(String text) {
        return found(MNEMONIC, text.toLowerCase(Locale.ROOT));
    }

    private static TreeSet<String> places(String text) {
        return found(PLACES, text);
    }

    private static TreeSet<String> found(Pattern pattern, String text) {
        return pattern.matcher(text)
                .results()
                .map(MatchResult::group)
                .collect(TreeSet::new, TreeSet::add, TreeSet::addAll);
    }
}
