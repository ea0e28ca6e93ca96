package wickbench.stock.ui;

import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The tabs of the page in a row; arrows, digits and the pointer choose. The chosen one is strong and underlined. */
final class TabBar extends Canvas {
    private static final int HEIGHT = 32;
    private static final int GAP = 28;

    private final Theme theme;
    private final Consumer<Tab> chosen;
    private Tab now = Tab.LOTS;

    TabBar(Composite parent, Theme theme, Consumer<Tab> chosen) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.theme = theme;
        this.chosen = chosen;
        setBackground(parent.getBackground());
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.MouseDown, event -> at(event.x));
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.Traverse, event -> event.doit = leaves(event.detail));
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        Names.give(this, () -> StockUiWords.get("tab.name", now.words(), now.ordinal() + 1, Tab.values().length));
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_TABFOLDER;
            }
        });
    }

    void show(Tab tab) {
        now = tab;
        redraw();
    }

    Tab shown() {
        return now;
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        return new Point(right(Tab.EQUIPMENT) + theme.px(4), theme.px(HEIGHT));
    }

    private static boolean leaves(int detail) {
        return detail == SWT.TRAVERSE_TAB_NEXT
                || detail == SWT.TRAVERSE_TAB_PREVIOUS
                || detail == SWT.TRAVERSE_ESCAPE
                || detail == SWT.TRAVERSE_MNEMONIC;
    }

    private void key(Event event) {
        Tab[] all = Tab.values();
        int digit = event.character - '1';
        if (event.keyCode == SWT.ARROW_RIGHT) {
            choose(all[(now.ordinal() + 1) % all.length]);
        } else if (event.keyCode == SWT.ARROW_LEFT) {
            choose(all[(now.ordinal() + all.length - 1) % all.length]);
        } else if (digit >= 0 && digit < all.length) {
            choose(all[digit]);
        }
    }

    private void at(int x) {
        setFocus();
        for (Tab tab : Tab.values()) {
            if (x < right(tab) + theme.px(GAP) / 2) {
                choose(tab);
                return;
            }
        }
    }

    private void choose(Tab tab) {
        if (tab != now) {
            show(tab);
            chosen.accept(tab);
        }
    }

    /** Each tab is as wide as its strong words, so that nothing moves when another is chosen. */
    private int right(Tab last) {
        GC gc = new GC(this);
        gc.setFont(theme.font(Type.STRONG));
        int x = theme.px(2);
        for (Tab tab : Tab.values()) {
            x += gc.textExtent(tab.words()).x;
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
        for (Tab tab : Tab.values()) {
            boolean here = tab == now;
            gc.setFont(theme.font(Type.STRONG));
            int width = gc.textExtent(tab.words()).x;
            int x = right(tab) - width;
            gc.setFont(theme.font(here ? Type.STRONG : Type.BODY));
            gc.setForeground(
                    theme.color(here ? theme.palette().ink() : theme.palette().quiet()));
            gc.drawText(tab.words(), x, theme.px(4), true);
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
