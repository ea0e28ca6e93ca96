package wickbench.stock;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Files that come into the stock room and leave it.
 *
 * <p>What leaves takes its form from the ending of its name: {@code .pdf}, {@code .csv}, {@code .xlsx} or {@code .jsonl}. A file is
 * written whole or not at all. Each method throws {@link wickbench.api.check.BadInput} when a file cannot be read or written.
 */
@ProviderType
public interface Papers {

    /** Reads the definition of a kit; the schema is {@code docs/formats/kit-1.schema.json}. */
    Kit kit(Path file);

    /** Writes how the stock room stands: lots, what is due, outlook, fridges and equipment. */
    void report(Instant now, Path out);

    /**
     * Writes every result of a trace, to be looked into.
     *
     * @param subject the lot or the result that was asked for
     */
    void recall(Trace trace, String subject, Path out);

    /** Writes what fridges did. */
    void fridges(List<FridgeTrace> traces, Path out);
}
