package wickbench.plant.book;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import wickbench.api.attachment.Attachments;
import wickbench.api.attachment.Attachments.Looked;
import wickbench.api.attachment.Picture;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.journal.Entry;
import wickbench.api.words.Decimals;
import wickbench.plant.Thing;
import wickbench.plant.site.FloorPicture;
import wickbench.plant.site.Spot;

/** Takes the floor picture in, and places points on it. */
record FloorKeeping(Writing writing, Optional<Attachments> attachments) {
    /** So many digits place a point to a pixel on any picture that is taken. */
    private static final MathContext DIGITS = new MathContext(6);

    /** Of a picture that is shown as it is stored (CIPA DC-008, tag 0x0112). */
    private static final int UPRIGHT = 1;

    FloorPicture picture(Path file, Actor by) {
        Attachments shelf = attachments.orElseThrow(() -> Said.refused("picture.no-attachments"));
        String name = file.getFileName().toString();
        FloorPicture picture = look(shelf, file, name);
        Entry entry = writing.write(Act.KEEP_PLANT, FloorPicture.KIND, picture.body(), by);
        try (InputStream content = Files.newInputStream(file)) {
            shelf.add(content, name, entry.ref(), by.who());
        } catch (IOException e) {
            throw Said.wrong(name, "matrix.unreadable", e.getMessage());
        }
        return picture;
    }

    private static FloorPicture look(Attachments shelf, Path file, String name) {
        try (InputStream content = Files.newInputStream(file)) {
            Looked looked = shelf.look(content, name);
            Picture found = looked.picture().orElseThrow(() -> Said.wrong(name, "picture.none"));
            if (found.unreadable().isPresent()) {
                throw Said.wrong(
                        name,
                        "picture.unfit." + found.unreadable().get().replace("picture.", ""),
                        found.width(),
                        found.height(),
                        Picture.MOST_PIXELS);
            }
            if (found.orientation() != UPRIGHT) {
                throw Said.wrong(name, "picture.unfit.turned");
            }
            return new FloorPicture(looked.content(), found.width(), found.height(), name);
        } catch (NoSuchFileException e) {
            throw Said.wrong(name, "matrix.absent");
        } catch (IOException e) {
            throw Said.wrong(name, "matrix.unreadable", e.getMessage());
        }
    }

    Spot place(String point, BigDecimal x, BigDecimal y, Actor by) {
        writing.known(Thing.POINT, point);
        FloorPicture picture = writing.now().picture().orElseThrow(() -> Said.wrong("POINT", "picture.missing"));
        Spot spot = new Spot(point, share("X", x, picture.width(), picture), share("Y", y, picture.height(), picture));
        writing.write(Act.KEEP_PLANT, Spot.KIND, spot.body(), by);
        return spot;
    }

    private static BigDecimal share(String field, BigDecimal pixel, int of, FloorPicture picture) {
        if (pixel.signum() < 0 || pixel.compareTo(BigDecimal.valueOf(of)) >= 0) {
            throw Said.wrong(field, "picture.outside", Decimals.of(pixel), picture.width(), picture.height());
        }
        return pixel.divide(BigDecimal.valueOf(of), DIGITS);
    }
}
