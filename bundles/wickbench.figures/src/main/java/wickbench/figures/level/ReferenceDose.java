package wickbench.figures.level;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wickbench.api.words.Words;

/**
 * A dose below which few of those who are allergic react, in mg of total protein of the source.
 *
 * @param allergen the source, as a code: {@code peanut}
 * @param mg the dose; empty where none is recommended
 * @param publication where it is published
 * @param known how the value here is known
 */
public record ReferenceDose(String allergen, Optional<BigDecimal> mg, Publication publication, Known known) {
    private static final Words WORDS = Words.of(ReferenceDose.class, "figures");

    /** Where doses are published. */
    public enum Publication {
        /** FAO/WHO ad hoc Expert Consultation on Risk Assessment of Food Allergens, Part 2 (2022). */
        FAO_WHO_2022("fao-who-2022"),
        /** The same, Part 5 (2023). */
        FAO_WHO_2023("fao-who-2023"),
        /** Belgian FASFC, Scientific Committee, opinion 24-2017: older and stricter. */
        FASFC_2017("fasfc-2017");

        private final String code;

        Publication(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    /** How a value is known. */
    public enum Known {
        /** Read in a published source. */
        READ,
        /** From memory of the source; check it before it decides anything. */
        UNVERIFIED
    }

    /** Returns the doses of the FAO/WHO consultation. */
    public static List<ReferenceDose> consultation() {
        return Stream.of(
                        read("walnut-pecan", "1"),
                        read("cashew-pistachio", "1"),
                        read("almond", "1"),
                        read("peanut", "2"),
                        read("egg", "2"),
                        read("milk", "2"),
                        read("sesame", "2"),
                        read("hazelnut", "3"),
                        read("wheat", "5"),
                        read("fish", "5"),
                        read("crustacea", "200"),
                        later("soy", "10", Known.READ),
                        later("celery", "1", Known.READ),
                        new ReferenceDose("oats", Optional.empty(), Publication.FAO_WHO_2023, Known.READ),
                        later("mustard", "1", Known.UNVERIFIED),
                        later("lupin", "10", Known.UNVERIFIED),
                        later("buckwheat", "10", Known.UNVERIFIED),
                        later("brazil-nut", "1", Known.UNVERIFIED),
                        later("macadamia", "1", Known.UNVERIFIED),
                        later("pine-nut", "1", Known.UNVERIFIED))
                .toList();
    }

    /** Returns the doses of the Belgian opinion; its egg levels imply 0.31 where it prints 0.3. */
    public static List<ReferenceDose> belgianOpinion() {
        return Stream.of(
                        belgian("peanut", "1.1"),
                        belgian("milk", "1.2"),
                        belgian("egg", "0.31"),
                        belgian("hazelnut", "0.5"),
                        belgian("cashew", "0.6"),
                        belgian("soy", "2.9"),
                        belgian("wheat", "1.3"),
                        belgian("mustard", "0.1"),
                        belgian("lupin", "4.5"),
                        belgian("sesame", "0.4"),
                        belgian("crustacea", "12.1"))
                .toList();
    }

    /** Returns the allergen in the language of the user. */
    public String name() {
        return WORDS.get("allergen." + allergen);
    }

    private static ReferenceDose read(String allergen, String mg) {
        return new ReferenceDose(allergen, Optional.of(new BigDecimal(mg)), Publication.FAO_WHO_2022, Known.READ);
    }

    private static ReferenceDose later(String allergen, String mg, Known known) {
        return new ReferenceDose(allergen, Optional.of(new BigDecimal(mg)), Publication.FAO_WHO_2023, known);
    }

    private static ReferenceDose belgian(String allergen, String mg) {
        return new ReferenceDose(allergen, Optional.of(new BigDecimal(mg)), Publication.FASFC_2017, Known.READ);
    }
}
