package wickbench.training.ui;

import java.io.InputStream;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.attachment.Attachments;
import wickbench.api.attachment.Picture;
import wickbench.api.journal.Hash;
import wickbench.shell.PageContext;
import wickbench.widgets.Names;

/** A kept photograph of a strip, as large as its room allows and never larger than it is; takes no room without one. */
final class StripPhoto extends Canvas {
    private static final int WIDTH = 372;
    private static final int HEIGHT = 260;

    private final PageContext context;
    private final Attachments attachments;
    private Optional<Hash> wanted = Optional.empty();
    private Optional<Image> image = Optional.empty();
    private int quarters;
    private String wrong = "";

    /**
     * A photograph as it was kept.
     *
     * @param quarters how often it is to be turned to the right by a quarter
     */
    private record Taken(ImageData pixels, int quarters) {}

    StripPhoto(Composite parent, PageContext context, Attachments attachments) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.context = context;
        this.attachments = attachments;
        setBackground(parent.getBackground());
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.Dispose, event -> letGo());
        Names.give(this, () -> wrong.isEmpty() ? TrainingUiWords.get("photo.name") : wrong);
        GridData data = new GridData(SWT.FILL, SWT.FILL, true, true);
        data.exclude = true;
        setLayoutData(data);
        setVisible(false);
    }

    /** Shows another photograph, or none. */
    void show(Optional<Hash> picture) {
        if (picture.equals(wanted)) {
            return;
        }
        wanted = picture;
        wrong = "";
        letGo();
        setVisible(picture.isPresent());
        ((GridData) getLayoutData()).exclude = picture.isEmpty();
        requestLayout();
        picture.ifPresent(hash -> context.jobs()
                .run(
                        TrainingUiWords.get("photo.reading"),
                        progress -> taken(hash),
                        found -> take(hash, found),
                        failure -> {
                            wrong = String.valueOf(failure.getMessage());
                            redraw();
                        }));
    }

    private Taken taken(Hash hash) throws java.io.IOException {
        int orientation = attachments.picture(hash).map(Picture::orientation).orElse(1);
        try (InputStream bytes = attachments.open(hash)) {
            return new Taken(new ImageData(bytes), quarters(orientation));
        }
    }

    /** Cameras that mirror are not known; so the four turns are enough. */
    private static int quarters(int orientation) {
        return switch (orientation) {
            case 3, 4 -> 2;
            case 5, 6 -> 1;
            case 7, 8 -> 3;
            default -> 0;
        };
    }

    private void take(Hash hash, Taken found) {
        if (!isDisposed() && wanted.filter(hash::equals).isPresent()) {
            letGo();
            image = Optional.of(new Image(getDisplay(), found.pixels()));
            quarters = found.quarters();
            redraw();
        }
    }

    /** Tells whether a photograph is on the screen. */
    boolean shows() {
        return image.isPresent();
    }

    private void letGo() {
        image.ifPresent(Image::dispose);
        image = Optional.empty();
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        return new Point(context.theme().px(WIDTH), context.theme().px(HEIGHT));
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        if (!wrong.isEmpty()) {
            gc.setForeground(context.theme().color(context.theme().palette().ink()));
            gc.drawText(wrong, 0, 0, true);
        }
        image.ifPresent(picture -> {
            Rectangle all = picture.getBounds();
            boolean lying = quarters % 2 == 1;
            double scale = Math.min(
                    1,
                    Math.min(
                            (double) area.width / (lying ? all.height : all.width),
                            (double) area.height / (lying ? all.width : all.height)));
            int width = (int) Math.round(all.width * scale);
            int height = (int) Math.round(all.height * scale);
            Transform turned = new Transform(gc.getDevice());
            turned.translate(area.width / 2f, area.height / 2f);
            turned.rotate(90f * quarters);
            gc.setTransform(turned);
            gc.setInterpolation(SWT.HIGH);
            gc.drawImage(picture, 0, 0, all.width, all.height, -width / 2, -height / 2, width, height);
            gc.setTransform(null);
            turned.dispose();
        });
    }
}
