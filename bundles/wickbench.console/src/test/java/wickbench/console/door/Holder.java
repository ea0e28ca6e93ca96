package wickbench.console.door;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;

/** A holder with a few commands of its own. */
final class Holder implements Answering {
    final List<List<String>> calls = new CopyOnWriteArrayList<>();
    final CountDownLatch waiting = new CountDownLatch(1);
    final CountDownLatch goOn = new CountDownLatch(1);
    volatile boolean hasWindow;

    @Override
    public int command(List<String> arguments, Path folder, PrintStream out, PrintStream err, Asking asking) {
        calls.add(arguments);
        switch (arguments.get(0)) {
            case "echo" -> {
                out.println(arguments + " from " + folder);
                err.println("noted");
            }
            case "lines" -> {
                for (int i = 0; i < Integer.parseInt(arguments.get(1)); i++) {
                    out.println("line " + i);
                }
            }
            case "piece" -> out.print("x".repeat(Integer.parseInt(arguments.get(1))));
            case "ask" -> out.println(asking.secret("pass").map(String::new).orElse("nobody to ask"));
            case "wait" -> waitToGoOn();
            default -> {
                return Integer.parseInt(arguments.get(1));
            }
        }
        return 0;
    }

    private void waitToGoOn() {
        waiting.countDown();
        try {
            goOn.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException("a command that runs is never interrupted", e);
        }
    }

    @Override
    public boolean comeForward() {
        return hasWindow;
    }
}
