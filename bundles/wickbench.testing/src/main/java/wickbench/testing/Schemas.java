package wickbench.testing;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The published schemas under {@code docs/formats}, to hold what is written against them. */
public final class Schemas {
    private static final Path DOCS = Path.of("..", "..", "docs", "formats");
    private static final String BASE = "https://schemas.invalid/";

    private final SchemaRegistry registry;

    private Schemas(SchemaRegistry registry) {
        this.registry = registry;
    }

    /**
     * Reads all schemas; they may refer to one another.
     *
     * @throws IOException when one cannot be read
     */
    public static Schemas published() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.list(DOCS)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".json")).toList()) {
                texts.put(BASE + file.getFileName(), Files.readString(file));
            }
        }
        return new Schemas(SchemaRegistry.withDefaultDialect(
                SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(texts)));
    }

    /** Returns what is wrong with a JSON text by the schema in that file; empty when nothing is. */
    public List<String> errors(String file, String text) {
        return registry.getSchema(SchemaLocation.of(BASE + file)).validate(text, InputFormat.JSON).stream()
                .map(Object::toString)
                .toList();
    }
}
