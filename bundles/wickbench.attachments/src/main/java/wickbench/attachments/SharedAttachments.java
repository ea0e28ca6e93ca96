package wickbench.attachments;

import java.nio.file.Path;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.SharedFiles;

/** The attachments, which every station needs to show an entry whole. */
@Component
public final class SharedAttachments implements SharedFiles {
    private final Path folder;
    private final Storage storage;
    private final Index index;

    @Activate
    public SharedAttachments(@Reference Home home, @Reference Index index) {
        storage = new Storage(home.folder());
        folder = home.folder().resolve(folder());
        this.index = index;
    }

    @Override
    public String folder() {
        return "attachments";
    }

    @Override
    public List<String> wanted() {
        return index.read(AttachmentView.NAME, AttachmentView::contents).stream()
                .filter(content -> !storage.isThere(content))
                .map(content ->
                        folder.relativize(storage.file(content)).toString().replace('\\', '/'))
                .toList();
    }
}
