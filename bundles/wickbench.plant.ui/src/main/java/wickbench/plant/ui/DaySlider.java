package wickbench.plant.ui;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Names;
import wickbench.widgets.Type;

/** Goes back and forth over the last weeks; the arrows move it by a day, and a button plays them. */
final class DaySlider {
    private static final int DAYS = 56;
    private static final int EACH_MILLIS = 350;

    private final Scale scale;
    private final Label words;
    private final Button play;
    private final Consumer<LocalDate> chosen;
    private LocalDate today;
    private boolean playing;

    DaySlider(Composite parent, PageContext context, LocalDate today, Consumer<LocalDate> chosen) {
        this.today = today;
        this.chosen = chosen;
        Controls controls = context.theme().controls();
        Composite bar = Fit.wide(controls.box(parent, 3));
        play = controls.button(bar, PlantUiWords.get("slider.play"), this::play);
        scale = Fit.wide(new Scale(bar, SWT.HORIZONTAL));
        scale.setBackground(bar.getBackground());
        scale.setMaximum(DAYS);
        scale.setIncrement(1);
        scale.setPageIncrement(7);
        scale.setSelection(DAYS);
        Names.give(scale, () -> PlantUiWords.get("slider.name", day()));
        words = controls.label(bar, Type.STRONG, "");
        GridData room = new GridData(SWT.RIGHT, SWT.CENTER, false, false);
        room.widthHint = context.theme().px(210);
        words.setLayoutData(room);
        scale.addListener(SWT.Selection, event -> moved());
        say();
    }

    void today(LocalDate now) {
        today = now;
        say();
    }

    LocalDate day() {
        return today.minusDays((long) DAYS - scale.getSelection());
    }

    /** Goes to a day, as by hand. */
    void go(LocalDate day) {
        long back = java.time.temporal.ChronoUnit.DAYS.between(day, today);
        scale.setSelection((int) Math.max(0, DAYS - back));
        moved();
    }

    private void moved() {
        say();
        chosen.accept(day());
    }

    private void say() {
        words.setText(
                scale.getSelection() == DAYS
                        ? PlantUiWords.get("slider.today", day())
                        : PlantUiWords.get("slider.day", day()));
    }

    /** Plays from where it stands, or from the beginning; pressed again, it stops. */
    private void play() {
        playing = !playing;
        play.setText(PlantUiWords.get(playing ? "slider.stop" : "slider.play"));
        if (playing && scale.getSelection() == DAYS) {
            scale.setSelection(0);
        }
        next();
    }

    private void next() {
        if (!playing || scale.isDisposed()) {
            return;
        }
        moved();
        if (scale.getSelection() == DAYS) {
            playing = false;
            play.setText(PlantUiWords.get("slider.play"));
            return;
        }
        scale.setSelection(scale.getSelection() + 1);
        scale.getDisplay().timerExec(EACH_MILLIS, this::next);
    }
}
