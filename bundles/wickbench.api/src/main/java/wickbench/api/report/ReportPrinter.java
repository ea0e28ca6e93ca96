package wickbench.api.report;

import java.io.IOException;
import java.io.OutputStream;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Prints reports; a service for each form, absent where no bundle can.
 *
 * <p>The service property {@value #MEDIA_TYPE} names the form, so that it is known without being made.
 */
@ProviderType
public interface ReportPrinter {
    String MEDIA_TYPE = "wickbench.media-type";
    String PDF = "application/pdf";
    String XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
    String CSV = "text/csv";
    String JSON_LINES = "application/jsonl";

    /** Returns what it prints, for example {@value #PDF}. */
    String mediaType();

    /**
     * Prints a report; leaves the stream open. All but PDF hold its tables only.
     *
     * @throws IOException when the stream refuses
     */
    void print(Report report, OutputStream out) throws IOException;
}
