package wickbench.widgets;

import java.util.List;
import java.util.function.IntConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/** The tabs of a page in a row; arrows, digits and the pointer choose. The chosen one is strong and underlined. */
public final class TabBar extends Canvas {
    private static final int HEIGHT = 32;
    private static final int GAP = 28;

    private final Theme theme;
    private final List<String> tabs;
    private final IntConsumer chosen;
    private int now;

    /**
     * Makes them; the first is the chosen one.
     *
     * @param tabs their words
     * @param chosen hears which one a person has chosen, counted from 0
     */
    public TabBar(Composite parent, Theme theme, List<String> tabs, IntConsumer chosen) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.theme = theme;
        this.tabs = List.copyOf(tabs);
        this.chosen = chosen;
        setBackground(parent.getBackground());
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.MouseDown, event -> at(event.x));
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.Traverse, event -> event.doit = leaves(event.detail));
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        Names.give(this, () -> WidgetWords.get("tabs.name", tabs.get(now), now + 1, tabs.size()));
        Names.role(this, ACC.ROLE_TABFOLDER);
    }

    /** Shows another one as chosen; nobody hears of it. */
    public void show(int tab) {
        now = tab;
        redraw();
    }

    public int shown() {
        return now;
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        return new Point(right(tabs.size() - 1) + theme.px(4), theme.px(HEIGHT));
    }

    private static boolean leaves(int detail) {
        return detail == SWT.TRAVERSE_TAB_NEXT
                || detail == SWT.TRAVERSE_TAB_PREVIOUS
                || detail == SWT.TRAVERSE_ESCAPE
                || detail == SWT.TRAVERSE_MNEMONIC;
    }

    private void key(Event event) {
        int digit = event.character - '1';
        if (event.keyCode == SWT.ARROW_RIGHT) {
            choose((now + 1) % tabs.size());
        } else if (event.keyCode == SWT.ARROW_LEFT) {
            choose((now + tabs.size() - 1) % tabs.size());
        } else if (digit >= 0 && digit < tabs.size()) {
            choose(digit);
        }
    }

    private void at(int x) {
        setFocus();
        for (int tab = 0; tab < tabs.size(); tab++) {
            if (x < right(tab) + theme.px(GAP) / 2) {
                choose(tab);
                return;
            }
        }
    }

    private void choose(int tab) {
        if (tab != now) {
            show(tab);
            chosen.accept(tab);
        }
    }

    /** Each tab is as wide as its strong words, so that nothing moves when another is chosen. */
    private int right(int last) {
        GC gc = new GC(this);
        gc.setFont(theme.font(Type.STRONG));
        int x = theme.px(2);
        for (int tab = 0; tab < tabs.size(); tab++) {
            x += gc.textExtent(tabs.get(tab)).x;
            if (tab == last) {
                break;
            }
            x += theme.px(GAP);
        }
        gc.dispose();
        return x;
    }

    private void paint(GC gc) {
        gc.setAntialias(SWT.ON);
        for (int tab = 0; tab < tabs.size(); tab++) {
            boolean here = tab == now;
            gc.setFont(theme.font(Type.STRONG));
            int width = gc.textExtent(tabs.get(tab)).x;
            int x = right(tab) - width;
            gc.setFont(theme.font(here ? Type.STRONG : Type.BODY));
            gc.setForeground(
                    theme.color(here ? theme.palette().ink() : theme.palette().quiet()));
            gc.drawText(tabs.get(tab), x, theme.px(4), true);
            if (here) {
                gc.setBackground(theme.color(theme.palette().accent()));
                gc.fillRectangle(x, theme.px(HEIGHT - 4), width, theme.px(3));
                if (isFocusControl()) {
                    gc.setForeground(theme.color(theme.palette().accent()));
                    gc.drawRoundRectangle(
                            x - theme.px(6) / 3,
                            0,
                            width + theme.px(4) - 1,
                            theme.px(HEIGHT) - 1,
                            theme.px(6),
                            theme.px(6));
                }
            }
        }
    }
}
