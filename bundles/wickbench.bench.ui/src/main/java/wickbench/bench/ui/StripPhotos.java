package wickbench.bench.ui;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.api.check.Refusal;
import wickbench.api.journal.EntryRef;
import wickbench.api.person.PersonId;
import wickbench.bench.run.RunState;
import wickbench.shell.PageContext;
import wickbench.widgets.Fit;
import wickbench.widgets.Wide;

/** Photographs of a strip, by file or drop; they are added to its entry once that stands in the journal. */
final class StripPhotos {
    private final PageContext context;
    private final BenchDoors doors;
    private final Label words;
    private final Supplier<Optional<RunState>> run;
    private int strip;

    /**
     * @param over where files may be dropped
     * @param run the run under way
     */
    StripPhotos(
            Composite parent, Composite over, PageContext context, BenchDoors doors, Supplier<Optional<RunState>> run) {
        this.context = context;
        this.doors = doors;
        this.run = run;
        // what carries on stands at the right end, as on every stage of a run
        Composite row = Fit.wide(context.theme().controls().box(parent, 2));
        Button choose = context.theme().controls().button(row, FlowWords.get("photo.choose"), this::choose);
        words = context.theme().controls().quiet(row, "");
        Wide.button(choose, context.theme());
        words.setText(FlowWords.get("photo.drop"));
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

    void show(int number) {
        strip = number;
    }

    void choose() {
        context.files()
                .open(FlowWords.get("photo.title"), "*.jpg;*.jpeg;*.png", "*")
                .ifPresent(this::add);
    }

    void add(Path file) {
        run.get().ifPresent(under -> doors.photos().add(under, strip, file));
        words.setText(FlowWords.get("photo.waits", file.getFileName()));
        words.requestLayout();
    }

    /** Adds what waits for strips whose entries are there by now. */
    void recorded(RunState now) {
        doors.photos().ready(now).forEach(this::attach);
    }

    private void attach(PhotoTray.Ready ready) {
        UUID reading = ready.strip().recorded().orElseThrow();
        PersonId by = ready.strip().strip().unread().operator();
        context.jobs()
                .run(
                        FlowWords.get("photo.adding"),
                        progress -> keep(reading, ready.files(), by),
                        count -> words.setText(FlowWords.get("photo.added", count)),
                        failure -> words.setText(failure.getMessage()));
    }

    private int keep(UUID reading, List<Path> files, PersonId by) throws IOException {
        EntryRef about = doors.index()
                .find(reading)
                .orElseThrow(() -> new Refusal("reading.unknown", FlowWords.get("photo.no-entry")));
        for (Path file : files) {
            try (InputStream bytes = Files.newInputStream(file)) {
                doors.attachments().add(bytes, file.getFileName().toString(), about, by);
            }
        }
        return files.size();
    }
}
