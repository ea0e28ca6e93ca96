package wickbench.api.report;

import java.io.IOException;
import java.io.OutputStream;
import org.osgi.annotation.versioning.ProviderType;

/** Prints reports; absent where no bundle can. */
@ProviderType
public interface ReportPrinter {

    /** Returns the media type it prints, for example {@code application/pdf}. */
    String mediaType();

    /**
     * Prints a report; leaves the stream open.
     *
     * @throws IOException when the stream refuses
     */
    void print(Report report, OutputStream out) throws IOException;
}
