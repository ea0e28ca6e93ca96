package wickbench.api.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class CodedTest {
    enum Spelt implements Coded {
        FOOD_SOLID,
        SWAB
    }

    /** Makes its own codes, one of which spells another's name. */
    enum Own implements Coded {
        FIRST("second"),
        SECOND("third.part");

        private final String code;

        Own(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    @Test
    void findsEveryChoiceByItsCode() {
        for (Spelt choice : Spelt.values()) {
            assertThat(Coded.of(Spelt.class, choice.code())).isEqualTo(choice);
        }
        for (Own choice : Own.values()) {
            assertThat(Coded.of(Own.class, choice.code())).isEqualTo(choice);
        }
    }

    @Test
    void refusesWhatOnlyResemblesACode() {
        for (String wrong : new String[] {"FOOD_SOLID", "food_solid", "Food-solid", "food-solid ", ""}) {
            assertThatThrownBy(() -> Coded.of(Spelt.class, wrong))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("expected one of food-solid, swab, found '" + wrong + "'");
        }
        assertThatThrownBy(() -> Coded.of(Own.class, "first")).isInstanceOf(IllegalArgumentException.class);
    }
}
