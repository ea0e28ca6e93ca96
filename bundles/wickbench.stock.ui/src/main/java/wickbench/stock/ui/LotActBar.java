package wickbench.stock.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import wickbench.stock.Lot;
import wickbench.widgets.Controls;
import wickbench.widgets.Theme;

/** The buttons of a lot: what is likely next, and a menu with everything else. */
record LotActBar(Theme theme, Lot lot, boolean clashing, Optional<LotAct> next, Consumer<LotAct> chosen) {
    private static final List<LotAct> OFTEN = List.of(LotAct.OPEN, LotAct.TAKE, LotAct.COUNT);

    void fill(Composite parent) {
        Controls controls = theme.controls();
        Composite row = controls.row(parent);
        next.ifPresent(act -> controls.button(row, verb(act), () -> chosen.accept(act)));
        OFTEN.stream()
                .filter(act -> next.filter(act::equals).isEmpty() && act.fits(lot, clashing))
                .forEach(act -> controls.button(row, verb(act), () -> chosen.accept(act)));
        Button more = controls.button(row, StockUiWords.get("act.more"), () -> {});
        more.addListener(SWT.Selection, event -> open(more));
    }

    /** What the state of the lot forbids is there, and cannot be chosen. */
    private void open(Button more) {
        Menu menu = new Menu(more);
        for (LotAct act : LotAct.values()) {
            MenuItem item = new MenuItem(menu, SWT.PUSH);
            item.setText(verb(act));
            item.setEnabled(act.fits(lot, clashing));
            item.addListener(SWT.Selection, event -> chosen.accept(act));
        }
        Rectangle at = more.getBounds();
        menu.setLocation(more.getParent().toDisplay(at.x, at.y + at.height));
        menu.addListener(SWT.Hide, event -> more.getDisplay().asyncExec(menu::dispose));
        menu.setVisible(true);
    }

    private static String verb(LotAct act) {
        return StockUiWords.get("act." + act.code() + ".open");
    }
}
