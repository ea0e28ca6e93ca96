package wickbench.api.attachment;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class FileNameLawTest {

    @Property
    void any_text_becomes_a_name_that_stays_in_its_folder(@ForAll String text) {
        String name = FileName.of(text).value();
        Path folder = Path.of("/some/folder");
        assertThat(folder.resolve(name).normalize().getParent()).isEqualTo(folder);
        assertThat(name.getBytes(StandardCharsets.UTF_8).length).isBetween(1, 255);
        assertThat(FileName.of(name).value()).isEqualTo(name);
    }
}
