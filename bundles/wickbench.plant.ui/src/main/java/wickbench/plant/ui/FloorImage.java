package wickbench.plant.ui;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.eclipse.swt.graphics.ImageData;
import wickbench.api.attachment.Attachments;
import wickbench.api.attachment.Picture;
import wickbench.plant.site.FloorPicture;

/** The floor picture decoded, off the UI thread and only as large as its header said it may be. */
final class FloorImage {
    /** No screen shows more across. */
    private static final int WIDEST = 2400;

    private FloorImage() {}

    static Optional<ImageData> of(FloorPicture picture, PlantDoors doors) {
        Attachments shelf = doors.attachments();
        boolean fits = shelf.picture(picture.content())
                .map(Picture::unreadable)
                .filter(Optional::isEmpty)
                .isPresent();
        if (!fits) {
            return Optional.empty();
        }
        try (InputStream in = shelf.open(picture.content())) {
            ImageData data = new ImageData(in);
            return Optional.of(
                    data.width > WIDEST ? data.scaledTo(WIDEST, Math.max(1, data.height * WIDEST / data.width)) : data);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
