package wickbench.training.face;

import java.nio.file.Path;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.training.Call;
import wickbench.training.Competences;
import wickbench.training.PanelStrip;
import wickbench.training.Round;
import wickbench.training.RoundKey;
import wickbench.training.RoundSheets;

/** Reads and writes the sheets of rounds; times without offset are by the site's clocks. */
@Component
public final class SheetFiles implements RoundSheets {
    private final Competences book;

    @Activate
    public SheetFiles(@Reference Competences book) {
        this.book = book;
    }

    @Override
    public List<Call> calls(Round round, Path file) {
        return new CallSheet(round, book.zone()).read(file);
    }

    @Override
    public void blank(Round round, Path out) {
        new CallSheet(round, book.zone()).write(out);
    }

    @Override
    public void labels(RoundKey key, Path out) {
        Labels.write(key, out);
    }

    @Override
    public List<PanelStrip> panel(Path file) {
        return PanelSheet.read(file);
    }
}
