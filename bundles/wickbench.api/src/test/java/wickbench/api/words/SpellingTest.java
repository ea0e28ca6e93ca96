package wickbench.api.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import wickbench.api.journal.StationId;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;

/** Ids are spelled as their pages say, and as the forms in the schemas say. */
class SpellingTest {
    private record Id(Pattern form, Function<String, Object> made) {}

    private static final List<Id> IDS = List.of(
            new Id(Pattern.compile("[a-z][a-z0-9-]{0,31}"), StationId::new),
            new Id(Pattern.compile("[a-z0-9][a-z0-9._-]{0,31}"), PersonId::new),
            new Id(Pattern.compile("[a-z0-9][a-z0-9._-]{0,39}"), MethodId::new));

    @Provide
    Arbitrary<String> texts() {
        Arbitrary<String> near = Arbitraries.strings()
                .withCharRange('a', 'z')
                .withCharRange('0', '9')
                .withChars("._-AZ/:`{@ \n\u00e9\u0661")
                .ofMaxLength(4);
        Arbitrary<String> right = Arbitraries.strings()
                .withCharRange('a', 'c')
                .withChars("09-")
                .ofMinLength(30)
                .ofMaxLength(42);
        return Arbitraries.oneOf(near, right);
    }

    @Property
    void an_id_is_taken_when_it_has_its_form_and_at_no_other_time(@ForAll("texts") String text) {
        for (Id id : IDS) {
            if (id.form().matcher(text).matches()) {
                assertThatCode(() -> id.made().apply(text)).doesNotThrowAnyException();
            } else {
                assertThatThrownBy(() -> id.made().apply(text))
                        .isInstanceOf(IllegalArgumentException.class)
                        .hasMessageEndingWith("found '" + text + "'");
            }
        }
    }

    @Property
    void a_digit_is_one_of_ten(@ForAll char c) {
        assertThat(Spelling.isDigit(c)).isEqualTo("0123456789".indexOf(c) >= 0);
    }
}
