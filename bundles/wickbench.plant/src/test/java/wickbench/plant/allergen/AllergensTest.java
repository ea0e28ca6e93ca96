package wickbench.plant.allergen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class AllergensTest {

    @Test
    void codex_of_2024_always_declares_these() {
        // CXS 1-1985, revision adopted by CAC47 in November 2024: soya and oats left the list of what is always
        // declared
        assertThat(of(AllergenList.CODEX))
                .containsExactlyInAnyOrder(
                        "gluten",
                        "wheat",
                        "rye",
                        "barley",
                        "crustaceans",
                        "egg",
                        "fish",
                        "milk",
                        "peanut",
                        "sesame",
                        "almond",
                        "cashew",
                        "hazelnut",
                        "pecan",
                        "pistachio",
                        "walnut");
    }

    @Test
    void codex_leaves_these_to_authorities() {
        // the same revision; from memory
        assertThat(of(AllergenList.CODEX_OPTIONAL))
                .containsExactlyInAnyOrder(
                        "buckwheat",
                        "celery",
                        "oats",
                        "lupin",
                        "mustard",
                        "soybean",
                        "brazil-nut",
                        "macadamia",
                        "pine-nut",
                        "sulphites");
    }

    @Test
    void the_union_declares_fourteen_groups() {
        // Regulation (EU) No 1169/2011, Annex II; from memory
        assertThat(of(AllergenList.EU))
                .containsExactlyInAnyOrder(
                        "gluten",
                        "wheat",
                        "rye",
                        "barley",
                        "oats",
                        "crustaceans",
                        "egg",
                        "fish",
                        "peanut",
                        "soybean",
                        "milk",
                        "almond",
                        "hazelnut",
                        "walnut",
                        "cashew",
                        "pecan",
                        "brazil-nut",
                        "pistachio",
                        "macadamia",
                        "celery",
                        "mustard",
                        "sesame",
                        "sulphites",
                        "lupin",
                        "molluscs");
        assertThat(Allergens.all().stream()
                        .filter(allergen -> allergen.lists().contains(AllergenList.EU))
                        .map(allergen -> allergen.group().isEmpty() ? allergen.code() : allergen.group())
                        .distinct())
                .hasSize(14);
    }

    @Test
    void the_states_declare_nine() {
        // FALCPA 2004 and the FASTER Act of 2021, from 1 January 2023; from memory
        assertThat(Allergens.all().stream()
                        .filter(allergen -> allergen.lists().contains(AllergenList.US))
                        .map(allergen -> allergen.group().equals("tree-nuts") ? "tree-nuts" : allergen.code())
                        .distinct())
                .containsExactlyInAnyOrder(
                        "milk", "egg", "fish", "crustaceans", "tree-nuts", "wheat", "peanut", "soybean", "sesame");
    }

    @Test
    void every_list_says_where_it_comes_from_and_when() {
        assertThat(AllergenList.values()).allSatisfy(list -> {
            assertThat(list.source()).isNotBlank();
            assertThat(list.date()).matches("\\d{4}-\\d{2}(-\\d{2})?");
        });
    }

    @Test
    void a_strip_for_gluten_answers_wheat_and_not_oats() {
        assertThat(Allergens.find("wheat").orElseThrow().answers(" Gluten")).isTrue();
        assertThat(Allergens.find("oats").orElseThrow().answers("gluten")).isFalse();
        assertThatThrownBy(() -> Allergens.known("nuts")).hasMessageContaining("hazelnut");
    }

    private static List<String> of(AllergenList list) {
        return Allergens.all().stream()
                .filter(allergen -> allergen.lists().contains(list))
                .map(Allergen::code)
                .toList();
    }
}
