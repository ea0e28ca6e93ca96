package wickbench.training.ui;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.shell.PageContext;
import wickbench.training.PanelStrip;
import wickbench.training.StripClass;
import wickbench.widgets.Field;
import wickbench.widgets.Form;

/** A panel of strips or kept photographs that experts have called before; blank where strips are made for the round. */
final class PanelField {
    private final PageContext context;
    private final TrainingDoors doors;
    private final DesignPanel design;
    private final Runnable pictures;
    private final Runnable grown;
    private final Field<Text> field;
    private List<PanelStrip> strips = List.of();

    /**
     * @param pictures told when the panel holds photographs
     */
    PanelField(
            Form form,
            Composite room,
            PageContext context,
            TrainingDoors doors,
            DesignPanel design,
            Runnable pictures,
            Runnable grown) {
        this.context = context;
        this.doors = doors;
        this.design = design;
        this.pictures = pictures;
        this.grown = grown;
        field = form.text(TrainingUiWords.get("panel.file"));
        field.hint(TrainingUiWords.get("panel.line"));
        field.control().addListener(SWT.DefaultSelection, event -> typed());
        field.control().addListener(SWT.FocusOut, event -> typed());
        Composite row = context.theme().controls().row(room);
        context.theme()
                .controls()
                .button(
                        row,
                        TrainingUiWords.get("panel.choose"),
                        () -> context.files()
                                .open(TrainingUiWords.get("panel.choose-file"), "*.csv", "*")
                                .ifPresent(this::open));
    }

    private void typed() {
        String text = field.control().getText().strip();
        if (text.isEmpty()) {
            take(List.of());
        } else {
            open(Path.of(text));
        }
    }

    /** Reads a panel; what is wrong with it stands at the field, and the round has none then. */
    void open(Path file) {
        if (!field.control().getText().equals(file.toString())) {
            field.control().setText(file.toString());
        }
        context.jobs()
                .run(
                        TrainingUiWords.get("panel.reading"),
                        progress -> doors.blind().sheets().panel(file),
                        this::take,
                        failure -> {
                            if (!field.control().isDisposed()) {
                                take(List.of());
                                field.complain(String.valueOf(failure.getMessage()));
                                grown.run();
                            }
                        });
    }

    private void take(List<PanelStrip> read) {
        if (field.control().isDisposed() || strips.equals(read)) {
            return;
        }
        strips = read;
        Map<StripClass, Integer> counts = new EnumMap<>(StripClass.class);
        read.forEach(strip -> counts.merge(strip.kind(), 1, Integer::sum));
        design.panel(read.isEmpty() ? Optional.empty() : Optional.of(counts));
        field.hint(
                read.isEmpty()
                        ? TrainingUiWords.get("panel.line")
                        : TrainingUiWords.get("panel.holds", read.size(), photographs()));
        if (pictured()) {
            pictures.run();
        }
        grown.run();
    }

    private long photographs() {
        return strips.stream().filter(strip -> strip.photograph().isPresent()).count();
    }

    boolean pictured() {
        return photographs() > 0;
    }

    List<PanelStrip> strips() {
        return strips;
    }

    Optional<Path> file() {
        return Optional.of(field.control().getText().strip())
                .filter(text -> !text.isEmpty())
                .map(Path::of);
    }
}
