package wickbench.attachments;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.attachment.FileName;
import wickbench.api.attachment.MediaType;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;

/** The body as written against its published schema, and both against wrong ones. */
class AddedTest {
    private static final String BASE = "https://schemas.invalid/";
    private static final String NAME = "attachment.added-1.schema.json";
    private static final Added ADDED = new Added(
            Hash.ofContent("x"), 1, MediaType.TEXT, FileName.of("notes µ.txt"), EntryRef.parse("station-1:4"));

    @Test
    void what_is_written_is_read_and_fits_the_schema() throws IOException {
        assertThat(Added.read("entry", ADDED.body()).orRefuse()).isEqualTo(ADDED);
        assertThat(schema().validate(ADDED.body().canonical(), InputFormat.JSON))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"sha256, abc", "type, image/gif", "name, ../notes.txt", "about, station-1", "about, 1", "more, x"})
    void what_is_wrong_is_refused_by_both(String member, String value) throws IOException {
        Json.Obj wrong = ADDED.body().with(member, value);
        assertThat(Added.read("entry", wrong).complaints()).isNotEmpty();
        assertThat(schema().validate(wrong.canonical(), InputFormat.JSON)).isNotEmpty();
    }

    private static Schema schema() throws IOException {
        String text = Files.readString(Path.of("../../docs/formats", NAME));
        return SchemaRegistry.withDefaultDialect(
                        SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(Map.of(BASE + NAME, text)))
                .getSchema(SchemaLocation.of(BASE + NAME));
    }
}
