package wickbench.bench;

import java.io.InputStream;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.check.Checked;
import wickbench.api.profile.SiteFacts;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RunSheets;

/** Reads run sheets by the methods and in the time zone of this site. */
@Component(service = {RunSheets.class, SheetDesk.class})
public final class SheetDesk implements RunSheets {
    private final MethodShelf shelf;
    private final SiteFacts site;

    @Activate
    public SheetDesk(@Reference MethodShelf shelf, @Reference SiteFacts site) {
        this.shelf = shelf;
        this.site = site;
    }

    @Override
    public Checked<List<Reading>> read(String source, InputStream bytes) {
        return read(source, bytes, shelf);
    }

    /** Reads a sheet by other methods than those issued. */
    Checked<List<Reading>> read(String source, InputStream bytes, MethodSource methods) {
        return RunSheet.read(source, bytes, methods, () -> site.now().zone());
    }
}
