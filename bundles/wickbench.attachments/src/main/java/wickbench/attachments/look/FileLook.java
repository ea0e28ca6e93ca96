package wickbench.attachments.look;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import wickbench.api.attachment.FileName;
import wickbench.api.attachment.MediaType;
import wickbench.api.attachment.Picture;

/** Says what a file is by its bytes. */
public final class FileLook {
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8};
    private static final byte[] PDF = {'%', 'P', 'D', 'F', '-'};

    private FileLook() {}

    /** Looks at a file that nobody changes meanwhile; the name only tells kinds of text apart. */
    public static Look at(Path file, FileName name) throws IOException {
        try (FileChannel channel = FileChannel.open(file)) {
            Look.Known known = kind(file, channel, name);
            refuseSecondKind(known.type(), channel);
            return known;
        } catch (Unfit unfit) {
            return new Look.Unreadable(unfit.getMessage());
        }
    }

    private static Look.Known kind(Path file, FileChannel channel, FileName name) throws IOException, Unfit {
        if (channel.size() == 0) {
            throw new Unfit(Unfit.EMPTY);
        }
        if (starts(file, PNG)) {
            return picture(file, MediaType.PNG);
        }
        if (starts(file, JPEG)) {
            return picture(file, MediaType.JPEG);
        }
        if (starts(file, PDF)) {
            if (!OtherKinds.endsAsPdf(channel)) {
                throw new Unfit(Unfit.CUT_SHORT);
            }
            return new Look.Known(MediaType.PDF, Optional.empty());
        }
        try (InputStream in = Files.newInputStream(file)) {
            return new Look.Known(TextLook.of(in, name), Optional.empty());
        }
    }

    private static Look.Known picture(Path file, MediaType type) throws IOException, Unfit {
        try (InputStream in = Files.newInputStream(file)) {
            Bytes bytes = new Bytes(in);
            bytes.skip(type == MediaType.PNG ? PNG.length : JPEG.length);
            Picture picture = type == MediaType.PNG ? PngLook.of(bytes) : JpegLook.of(bytes);
            return new Look.Known(type, Optional.of(picture));
        }
    }

    private static boolean starts(Path file, byte[] signature) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return Arrays.equals(in.readNBytes(signature.length), signature);
        }
    }

    private static void refuseSecondKind(MediaType type, FileChannel channel) throws IOException, Unfit {
        boolean pdf = type != MediaType.PDF && OtherKinds.isPdf(channel);
        boolean markup = type.isPicture() && OtherKinds.isMarkup(channel);
        if (pdf || markup || OtherKinds.isArchive(channel)) {
            throw new Unfit(Unfit.TWO_KINDS);
        }
    }
}
