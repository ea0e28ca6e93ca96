package wickbench.benchmarks;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Appends the same bytes to a plain file and forces it, line by line: nothing can be quicker and durable. */
final class RawAppend implements Contestant {
    private final FileChannel file;
    private final byte[] line;
    private final int count;

    RawAppend(Path path, String line, int count) throws IOException {
        file = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        this.line = (line + "\n").getBytes(StandardCharsets.UTF_8);
        this.count = count;
    }

    @Override
    public String name() {
        return "raw append and force";
    }

    @Override
    public double lap() throws Exception {
        return Timed.perSecond(count, () -> {
            for (int i = 0; i < count; i++) {
                file.write(ByteBuffer.wrap(line));
                file.force(false);
            }
        });
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
