package wickbench.bench.ui;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.check.Checked;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.reading.RecordedReading;
import wickbench.shell.PageContext;

/** Reads a whole run sheet, shows what it says, and records it: all rows or none. */
final class SheetDesk {
    private final PageContext context;
    private final BenchDoors doors;
    private final SheetView view;
    private Optional<SiteClock> clock = Optional.empty();
    private Optional<Path> wanted = Optional.empty();
    private Optional<SheetRead> sheet = Optional.empty();
    private boolean done;

    SheetDesk(Composite parent, PageContext context, BenchDoors doors, Runnable close) {
        this.context = context;
        this.doors = doors;
        view = new SheetView(parent, context, this::record, close);
        context.onActor(actor -> tell());
    }

    Composite control() {
        return view.control();
    }

    SheetView view() {
        return view;
    }

    /** Takes the site's clock; a sheet asked for before is opened now. */
    void clock(SiteClock site) {
        clock = Optional.of(site);
        wanted.ifPresent(this::open);
    }

    void open(Path file) {
        wanted = Optional.of(file);
        if (clock.isPresent()) {
            view.loading(file.getFileName().toString());
            context.jobs()
                    .run(BenchUiWords.get("sheet.reading", file), progress -> read(file), this::show, this::unreadable);
        }
    }

    private SheetRead read(Path file) throws IOException {
        String name = file.getFileName().toString();
        try (InputStream bytes = Files.newInputStream(file)) {
            Checked<List<Reading>> read = doors.sheets().read(name, bytes);
            List<RecordedReading> judged = read instanceof Checked.Good<List<Reading>> good
                    ? doors.door().judge(good.value())
                    : List.of();
            return new SheetRead(name, judged, read.complaints());
        }
    }

    private void show(SheetRead read) {
        sheet = Optional.of(read);
        done = false;
        view.show(read, clock.orElseThrow());
        tell();
        context.ready();
    }

    private void unreadable(Exception failure) {
        view.failed(BenchUiWords.get("sheet.unreadable", wanted.orElseThrow(), failure.getMessage()));
        context.ready();
    }

    private void record() {
        List<Reading> run = sheet.orElseThrow().readings().stream()
                .map(RecordedReading::reading)
                .toList();
        PersonId by = context.actor().orElseThrow();
        done = true;
        tell();
        context.jobs()
                .run(
                        BenchUiWords.get("recording"),
                        progress -> doors.door().record(run, by),
                        this::kept,
                        failure -> view.failed(BenchUiWords.get("not-recorded", failure.getMessage())));
    }

    private void kept(List<Kept> all) {
        long added = all.stream().filter(Kept::added).count();
        String words = added == 0
                ? BenchUiWords.get("sheet.nothing-added", all.size())
                : added == all.size()
                        ? BenchUiWords.get(
                                "sheet.added",
                                added,
                                all.get(0).ref(),
                                all.get(all.size() - 1).ref())
                        : BenchUiWords.get("sheet.some-added", added, all.size() - added);
        view.kept(words);
        context.say(words);
    }

    private void tell() {
        boolean good = sheet.filter(SheetRead::good).isPresent();
        boolean may = good && !done && context.actor().isPresent();
        view.mayRecord(
                sheet.filter(SheetRead::good)
                        .map(read -> read.readings().size())
                        .orElse(0),
                may);
        if (good && context.actor().isEmpty()) {
            view.kept(BenchUiWords.get("needed.actor"));
        }
    }
}
