package wickbench.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/** Hashes the same lines into a Merkle tree (RFC 9162 §2.1.1) from memory on one core, and does nothing else. */
final class RawMerkle implements Contestant {
    private final List<byte[]> lines = new ArrayList<>();
    private final String root;

    RawMerkle(Path folder, String root) throws IOException {
        this.root = root;
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(each -> each.getFileName().toString().startsWith("entries-"))
                    .sorted()
                    .toList()) {
                Files.readString(file)
                        .lines()
                        .forEach(line -> lines.add(line.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
            }
        }
    }

    @Override
    public String name() {
        return "raw Merkle over the same lines";
    }

    @Override
    public double lap() throws Exception {
        return Timed.perSecond(lines.size(), () -> {
            if (!HexFormat.of().formatHex(tree()).equals(root)) {
                throw new IllegalStateException("another root");
            }
        });
    }

    private record Subtree(byte[] hash, long leaves) {}

    private byte[] tree() throws Exception {
        MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
        Deque<Subtree> edge = new ArrayDeque<>();
        for (byte[] line : lines) {
            sha256.update((byte) 0);
            Subtree last = new Subtree(sha256.digest(line), 1);
            while (!edge.isEmpty() && edge.peek().leaves() == last.leaves()) {
                last = new Subtree(node(sha256, edge.pop(), last), 2 * last.leaves());
            }
            edge.push(last);
        }
        Subtree root = edge.pop();
        while (!edge.isEmpty()) {
            root = new Subtree(node(sha256, edge.pop(), root), 0);
        }
        return root.hash();
    }

    private static byte[] node(MessageDigest sha256, Subtree left, Subtree right) {
        sha256.update((byte) 1);
        sha256.update(left.hash());
        return sha256.digest(right.hash());
    }
}
