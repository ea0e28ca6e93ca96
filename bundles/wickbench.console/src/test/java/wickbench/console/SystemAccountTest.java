package wickbench.console;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wickbench.api.person.PersonId;

class SystemAccountTest {

    @Test
    void becomes_a_person_id() {
        assertThat(SystemAccount.person("PLANT\\Ana.Ruiz")).contains(new PersonId("plant-ana.ruiz"));
        assertThat(SystemAccount.person("x".repeat(80))).contains(new PersonId("x".repeat(32)));
    }

    @Test
    void is_nobody_when_nothing_of_the_name_remains() {
        assertThat(SystemAccount.person("___")).isEmpty();
    }
}
