package wickbench.plant.allergen;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.words.Coded;

/** All allergens that can be chosen, read once from the table beside this class. */
public final class Allergens {
    private static final Map<String, Allergen> ALL = read();

    private Allergens() {}

    /** Returns all, by the order of the table. */
    public static List<Allergen> all() {
        return List.copyOf(ALL.values());
    }

    public static Optional<Allergen> find(String code) {
        return Optional.ofNullable(ALL.get(code));
    }

    /**
     * Returns the code itself.
     *
     * @throws IllegalArgumentException when there is no such allergen, naming those that exist
     */
    public static String known(String code) {
        if (!ALL.containsKey(code)) {
            throw new IllegalArgumentException(
                    "expected an allergen (" + String.join(", ", ALL.keySet()) + "), found '" + code + "'");
        }
        return code;
    }

    private static Map<String, Allergen> read() {
        Map<String, Allergen> all = new LinkedHashMap<>();
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(Allergens.class.getResourceAsStream("allergens.csv"), StandardCharsets.UTF_8))) {
            in.lines().skip(1).map(line -> line.split(";", -1)).forEach(cells -> all.put(cells[0], allergen(cells)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }

    private static Allergen allergen(String[] cells) {
        Set<AllergenList> lists =
                words(cells[2]).map(code -> Coded.of(AllergenList.class, code)).collect(Collectors.toSet());
        return new Allergen(cells[0], cells[1], words(cells[3]).collect(Collectors.toSet()), lists);
    }

    private static Stream<String> words(String cell) {
        return Arrays.stream(cell.split(",")).map(String::strip).filter(word -> !word.isEmpty());
    }
}
