package wickbench.shell;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import wickbench.widgets.Controls;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** What was said last; while work takes long, that with its Cancel instead. */
final class StatusBar {
    /** Work shorter than this is nobody's business. */
    private static final int SHOWN_AFTER_MILLIS = 400;

    private static final int LOOK_MILLIS = 200;
    private static final int BUTTON_HEIGHT = 28;

    private final Composite row;
    private final Label said;
    private final Composite work;
    private final Label what;
    private final ProgressLine line;
    private final JobBoard board;
    private Optional<RunningJob<?>> seen = Optional.empty();
    private int seenFor;

    StatusBar(Composite row, Theme theme, JobBoard board) {
        this.board = board;
        Controls controls = theme.controls();
        this.row = row;
        said = controls.text(row, Type.SMALL, "");
        said.setForeground(theme.color(theme.palette().quiet()));
        work = controls.box(row, 3);
        what = controls.quiet(work, "");
        what.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        line = new ProgressLine(work, theme);
        Button cancel = controls.button(work, ShellWords.get("status.cancel"), this::cancel);
        cancel.setFont(theme.font(Type.SMALL));
        Names.keys(cancel, ShellWords.get("keys.everywhere.cancel.key"));
        cancel.setToolTipText(ShellWords.get("keys.everywhere.cancel.key"));
        GridData low = new GridData(SWT.END, SWT.CENTER, false, false);
        low.heightHint = theme.px(BUTTON_HEIGHT);
        cancel.setLayoutData(low);
        work.setVisible(false);
        look();
    }

    void say(String text) {
        said.setText(text);
        // whole also where it is longer than its room
        said.setToolTipText(text.isEmpty() ? null : text);
        row.layout(true, true);
    }

    /** Returns what is to be laid out, one over the other: only one of them is in sight. */
    List<Control> controls() {
        return List.of(said, work);
    }

    /** Returns the room that the one in sight would like. */
    int width() {
        Control inSight = work.getVisible() ? work : said;
        return inSight == said && said.getText().isEmpty() ? 0 : inSight.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
    }

    String said() {
        return said.getText();
    }

    /** Cancels the work that is told of. */
    void cancel() {
        seen.ifPresent(RunningJob::cancel);
    }

    /** Looks again and again at what is under way, as long as the bar lives. */
    private void look() {
        if (row.isDisposed()) {
            return;
        }
        Optional<RunningJob<?>> now = board.longest();
        seenFor = now.equals(seen) ? seenFor + LOOK_MILLIS : 0;
        seen = now;
        boolean lasting = now.isPresent() && seenFor >= SHOWN_AFTER_MILLIS;
        if (lasting) {
            what.setText(words(now.get()));
            line.show(now.get().steps());
        }
        show(lasting);
        row.getDisplay().timerExec(LOOK_MILLIS, this::look);
    }

    private String words(RunningJob<?> job) {
        int others = board.size() - 1;
        return others > 0 ? ShellWords.get("status.and-others", job.what(), others) : job.what();
    }

    private void show(boolean visible) {
        if (work.getVisible() != visible || visible) {
            work.setVisible(visible);
            said.setVisible(!visible);
            row.layout(true, true);
        }
    }
}
