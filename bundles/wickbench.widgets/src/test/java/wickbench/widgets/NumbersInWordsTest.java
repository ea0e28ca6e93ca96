package wickbench.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.NumericChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class NumbersInWordsTest {

    @Test
    void ninthComesBeforeTenth() {
        List<String> places = List.of("P-10", "P-9", "p-9b", "", "P-009", "10", "9");
        assertThat(places.stream().sorted(NumbersInWords::compare).toList())
                .containsExactly("", "9", "10", "P-9", "P-009", "p-9b", "P-10");
    }

    @Property
    void ordersInOneWayOnly(@ForAll @Words String one, @ForAll @Words String two, @ForAll @Words String three) {
        int there = NumbersInWords.compare(one, two);
        assertThat(Integer.signum(NumbersInWords.compare(two, one))).isEqualTo(-Integer.signum(there));
        if (there <= 0 && NumbersInWords.compare(two, three) <= 0) {
            assertThat(NumbersInWords.compare(one, three)).isNotPositive();
        }
    }

    @AlphaChars
    @NumericChars
    @StringLength(max = 6)
    @java.lang.annotation.Retention(java.lang.annotation.RetentionPolicy.RUNTIME)
    @interface Words {}
}
