package wickbench.widgets;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;

/**
 * A strip, drawn: its housing, sample port, window and lines, each line with its mark and, in words, what was seen of it.
 *
 * <p>Where it may be answered, the arrow keys go from line to line, and a key answers the line in focus: S seen, F faint, N not
 * seen, D damaged, Delete takes the answer back (the letters stand in the message file). A click on a line goes through the
 * answers. After an answer the focus goes on to the next line without one. Every line starts unanswered.
 */
public final class StripDrawing extends Canvas {
    private final Theme theme;
    private final StripSize size;
    private final Map<LineRole, Seen> answers = new EnumMap<>(LineRole.class);
    private final List<BiConsumer<LineRole, Optional<Seen>>> listeners = new ArrayList<>();
    private final Listener keys = this::key;
    private final Listener clicks = this::click;
    private Format format = Format.SANDWICH;
    private Map<LineRole, String> marks = Map.of();
    private boolean editable;
    private int focus;

    public StripDrawing(Composite parent, Theme theme, StripSize size) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.theme = theme;
        this.size = size;
        setBackground(parent.getBackground());
        addListener(SWT.Paint, event -> new StripPainter(event.gc, theme, this).paint());
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        addListener(SWT.Traverse, event -> {
            // arrows stay here; Tab, Enter and Escape go where they always go
            boolean arrow = event.detail == SWT.TRAVERSE_ARROW_NEXT || event.detail == SWT.TRAVERSE_ARROW_PREVIOUS;
            event.doit = !arrow;
        });
        new StripReaderVoice(this).speak();
    }

    /** Shows another strip, all its lines unanswered. */
    public void strip(Format next, Map<LineRole, String> printed) {
        format = next;
        marks = Map.copyOf(printed);
        answers.clear();
        focus = 0;
        redraw();
    }

    /** Shows what was seen; lines not named are unanswered. No listener hears of it. */
    public void answers(Map<LineRole, Seen> seen) {
        answers.clear();
        seen.forEach((role, answer) -> {
            if (format.lines().contains(role)) {
                answers.put(role, answer);
            }
        });
        redraw();
    }

    /** Returns what was answered so far. */
    public Map<LineRole, Seen> answers() {
        return Map.copyOf(answers);
    }

    public boolean complete() {
        return answers.size() == format.lines().size();
    }

    /** Lets a person answer, or not; a strip is not editable at first, and then the Tab key passes it by. */
    public void editable(boolean may) {
        if (may && !editable) {
            addListener(SWT.KeyDown, keys);
            addListener(SWT.MouseDown, clicks);
        } else if (!may) {
            removeListener(SWT.KeyDown, keys);
            removeListener(SWT.MouseDown, clicks);
        }
        editable = may;
        redraw();
    }

    public boolean editable() {
        return editable;
    }

    /** Hears of every answer given by a person; empty when one was taken back. */
    public void onAnswer(BiConsumer<LineRole, Optional<Seen>> listener) {
        listeners.add(listener);
    }

    /** Returns the line in focus. */
    public LineRole line() {
        return format.lines().get(focus);
    }

    /** Puts the focus on a line of the strip. */
    public void line(LineRole role) {
        focus = Math.max(0, format.lines().indexOf(role));
        redraw();
        getAccessible().setFocus(focus);
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        return new Point(theme.px(size.width()), theme.px(size.height()));
    }

    /** Returns how low it may become, in pixels of the screen, and still show every line. */
    public int minimumHeight() {
        return theme.px((size == StripSize.LARGE ? StripSize.MIDDLE : size).height());
    }

    /** Returns how large it is drawn, in the room that it has got. */
    StripSize size() {
        return size == StripSize.LARGE && getSize().y < theme.px(size.height()) ? StripSize.MIDDLE : size;
    }

    Format format() {
        return format;
    }

    String mark(LineRole role) {
        return marks.getOrDefault(role, WidgetWords.get("strip.mark." + role.code()));
    }

    Optional<Seen> answer(LineRole role) {
        return Optional.ofNullable(answers.get(role));
    }

    /** Returns in words what is known of a line. */
    String says(LineRole role) {
        return WidgetWords.get(answer(role).map(seen -> "strip." + seen.code()).orElse("strip.unanswered"));
    }

    private void key(Event event) {
        switch (event.keyCode) {
            case SWT.ARROW_DOWN, SWT.ARROW_RIGHT -> step(1);
            case SWT.ARROW_UP, SWT.ARROW_LEFT -> step(-1);
            case SWT.DEL, SWT.BS -> give(line(), Optional.empty());
            default -> StripKeys.answer(event).ifPresent(seen -> answerAndGoOn(Optional.of(seen)));
        }
    }

    private void answerAndGoOn(Optional<Seen> seen) {
        give(line(), seen);
        format.lines().stream()
                .filter(role -> answer(role).isEmpty())
                .findFirst()
                .ifPresent(this::line);
    }

    private void step(int by) {
        line(format.lines().get(Math.floorMod(focus + by, format.lines().size())));
    }

    private void give(LineRole role, Optional<Seen> seen) {
        seen.ifPresentOrElse(answer -> answers.put(role, answer), () -> answers.remove(role));
        redraw();
        getAccessible().setFocus(focus);
        listeners.forEach(listener -> listener.accept(role, seen));
    }

    private void click(Event event) {
        boolean here = isFocusControl();
        setFocus();
        for (LineRole role : format.lines()) {
            Rectangle row = StripPainter.row(this, theme, role);
            if (row.contains(event.x, event.y)) {
                boolean pointed = here && role == line();
                line(role);
                // the first click only points; the next ones answer
                if (pointed) {
                    give(role, StripKeys.next(answer(role)));
                }
            }
        }
    }
}
