package wickbench.plant.ui;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import wickbench.plant.PointLook;
import wickbench.plant.site.Spot;
import wickbench.widgets.Mark;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** Paints points on the floor picture: shape and colour, and the word of what is not calm or is in hand. */
record FloorPainter(GC gc, Theme theme, Rectangle box) {

    /** Says what to do first. */
    static void nothing(GC gc, Theme theme, Rectangle room) {
        TextLayout words = new TextLayout(gc.getDevice());
        words.setFont(theme.font(Type.BODY));
        words.setAlignment(SWT.CENTER);
        words.setWidth(Math.max(1, room.width - theme.px(48)));
        words.setText(PlantUiWords.get("picture.empty.title") + "\n\n" + PlantUiWords.get("picture.empty.text"));
        gc.setForeground(theme.color(theme.palette().quiet()));
        words.draw(gc, theme.px(24), Math.max(0, (room.height - words.getBounds().height) / 2));
        words.dispose();
    }

    void point(PointLook look, boolean chosen) {
        Mark mark = PointMarks.of(look);
        Spot spot = look.spot().orElseThrow();
        Image shape = theme.image(mark.shape(), mark.meaning());
        Rectangle size = shape.getBounds();
        int x = box.x + (int) (spot.x().doubleValue() * box.width);
        int y = box.y + (int) (spot.y().doubleValue() * box.height);
        int around = theme.px(chosen ? 15 : 12);
        gc.setBackground(theme.color(theme.palette().surface()));
        gc.fillOval(x - around, y - around, 2 * around, 2 * around);
        gc.setForeground(
                theme.color(chosen ? theme.palette().accent() : theme.palette().edge()));
        gc.setLineWidth(theme.px(chosen ? 3 : 1));
        gc.drawOval(x - around, y - around, 2 * around, 2 * around);
        gc.setLineWidth(1);
        gc.drawImage(shape, x - size.width / 2, y - size.height / 2);
        boolean calm = look.latest()
                .filter(latest -> !latest.outcome().positive() && !latest.doubted())
                .isPresent();
        if (chosen || !calm) {
            words(chosen ? look.point().name() + ": " + mark.word() : mark.word(), x, y + around);
        }
    }

    private void words(String words, int x, int y) {
        gc.setFont(theme.font(Type.SMALL));
        int width = gc.textExtent(words).x;
        int left = Math.max(box.x, Math.min(x - width / 2, box.x + box.width - width - theme.px(6)));
        gc.setBackground(theme.color(theme.palette().surface()));
        gc.fillRectangle(left - theme.px(3), y, width + theme.px(6), gc.textExtent(words).y);
        gc.setForeground(theme.color(theme.palette().ink()));
        gc.drawText(words, left, y, true);
    }
}
