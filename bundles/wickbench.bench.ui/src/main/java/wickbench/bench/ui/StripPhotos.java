package wickbench.bench.ui;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import wickbench.api.check.Refusal;
import wickbench.api.journal.EntryRef;
import wickbench.api.person.PersonId;
import wickbench.bench.run.StripState;
import wickbench.shell.PageContext;

/** Photographs of a strip, by file or drop; they are added to its entry once that stands in the journal. */
final class StripPhotos {
    private final PageContext context;
    private final BenchDoors doors;
    private final Map<Integer, List<Path>> waiting = new HashMap<>();
    private final Label words;
    private int strip;

    /** @param over where files may be dropped */
    StripPhotos(Composite parent, Composite over, PageContext context, BenchDoors doors) {
        this.context = context;
        this.doors = doors;
        Composite row = context.theme().controls().box(parent, 2);
        Button choose = context.theme().controls().button(row, FlowWords.get("photo.choose"), this::choose);
        words = context.theme().controls().quiet(row, "");
        Wide.button(choose, context.theme());
        boolean may = !doors.attachments().isEmpty();
        choose.setEnabled(may);
        words.setText(FlowWords.get(may ? "photo.drop" : "photo.absent"));
        if (may) {
            DropTarget target = new DropTarget(over, DND.DROP_COPY | DND.DROP_DEFAULT);
            target.setTransfer(new Transfer[] {FileTransfer.getInstance()});
            target.addDropListener(new DropTargetAdapter() {
                @Override
                public void drop(DropTargetEvent event) {
                    if (event.data instanceof String[] files) {
                        List.of(files).forEach(file -> add(Path.of(file)));
                    }
                }
            });
        }
    }

    void show(int number) {
        strip = number;
    }

    void choose() {
        FileDialog dialog = new FileDialog(words.getShell(), SWT.OPEN);
        dialog.setText(FlowWords.get("photo.title"));
        dialog.setFilterExtensions(new String[] {"*.jpg;*.jpeg;*.png", "*"});
        Optional.ofNullable(dialog.open()).map(Path::of).ifPresent(this::add);
    }

    void add(Path file) {
        waiting.computeIfAbsent(strip, first -> new ArrayList<>()).add(file);
        words.setText(FlowWords.get("photo.waits", file.getFileName()));
        words.requestLayout();
    }

    /** Adds what waits for a strip, now that its entry is there. */
    void recorded(StripState read) {
        if (read.recorded().isPresent() && waiting.containsKey(read.number())) {
            List<Path> files = waiting.remove(read.number());
            PersonId by = read.strip().unread().operator();
            context.jobs()
                    .run(
                            FlowWords.get("photo.adding"),
                            progress -> keep(read.recorded().get(), files, by),
                            count -> words.setText(FlowWords.get("photo.added", count)),
                            failure -> words.setText(failure.getMessage()));
        }
    }

    private int keep(UUID reading, List<Path> files, PersonId by) throws IOException {
        EntryRef about = doors.index()
                .find(reading)
                .orElseThrow(() -> new Refusal("reading.unknown", FlowWords.get("photo.no-entry")));
        for (Path file : files) {
            try (InputStream bytes = Files.newInputStream(file)) {
                doors.attachments().get(0).add(bytes, file.getFileName().toString(), about, by);
            }
        }
        return files.size();
    }
}
