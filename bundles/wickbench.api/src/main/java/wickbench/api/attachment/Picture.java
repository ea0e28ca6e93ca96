package wickbench.api.attachment;

import java.util.Optional;

/**
 * What the header of a picture says; nothing was decoded to know it.
 *
 * @param width in pixels, as stored
 * @param height in pixels, as stored
 * @param orientation how it is to be turned for looking at, 1 to 8 as in Exif (CIPA DC-008, tag 0x0112); 1 is upright
 * @param bits for each colour of a pixel
 * @param unreadable why it is not to be decoded here, as a code; empty when it may be
 */
public record Picture(int width, int height, int orientation, int bits, Optional<String> unreadable) {
    /** More than so many pixels are not decoded: at four bytes each they would fill 200 MB. */
    public static final long MOST_PIXELS = 50_000_000;

    public Picture {
        if (width < 1 || height < 1 || orientation < 1 || orientation > 8) {
            throw new IllegalArgumentException(
                    "no picture: " + width + " by " + height + ", orientation " + orientation);
        }
        if ((long) width * height > MOST_PIXELS) {
            unreadable = Optional.of("picture.too-large");
        }
    }
}
