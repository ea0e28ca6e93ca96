package wickbench.api.reading;

import java.io.InputStream;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.check.Checked;

/** Reads run sheets: CSV files with a strip a row. */
@ProviderType
public interface RunSheets {

    /**
     * Reads a sheet by the methods that this site has issued; nothing is recorded.
     *
     * <p>One wrong cell and no reading comes out, but every complaint is told, with line and column.
     *
     * @param source the file's name, for complaints and for the entries
     * @param bytes the sheet, read to its end and left open
     * @return the readings in the order of the rows
     */
    Checked<List<Reading>> read(String source, InputStream bytes);
}
