package wickbench.tests;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import wickbench.launcher.CannotStart;

/**
 * The built program, started once and called again and again: the same jars and the same front door as in a process for each call,
 * without the second and a half that a process takes to start.
 *
 * <p>Each call takes the home and lets it go, as a process does; relative paths start where the tests run.
 */
record StartedProgram(StartedSet set) implements AutoCloseable {
    private static final String CONSOLE = "wickbench.console";

    static StartedProgram of(List<String> features, Path temporary) throws CannotStart, IOException {
        return new StartedProgram(StartedSet.of(features, temporary));
    }

    Answer call(String... arguments) throws ReflectiveOperationException {
        return told("", arguments);
    }

    /** Calls it and types something on its standard input. */
    @SuppressWarnings("unchecked") // the front door says so
    Answer told(String typed, String... arguments) throws ReflectiveOperationException {
        InputStream in = new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Object streams = maker("Streams", InputStream.class, PrintStream.class, PrintStream.class)
                .newInstance(in, utf8(out), utf8(err));
        Supplier<Object> to = () -> streams;
        var door = (ToIntFunction<String[]>) maker("FrontDoor", BundleContext.class, Supplier.class)
                .newInstance(console().getBundleContext(), to);
        int code = door.applyAsInt(arguments);
        return new Answer(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Calls it as another program does that finds the home held: the home is there before and after. */
    Answer within(String... arguments) throws ReflectiveOperationException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Class<?> asking = console().loadClass(CONSOLE + ".door.Asking");
        Object nobody = Proxy.newProxyInstance(
                asking.getClassLoader(), new Class<?>[] {asking}, (self, method, asked) -> Optional.empty());
        Object attendance = attendance();
        Method command = attendance
                .getClass()
                .getMethod("command", List.class, Path.class, PrintStream.class, PrintStream.class, asking);
        command.setAccessible(true);
        int code = (int) command.invoke(
                attendance, List.of(arguments), Path.of("").toAbsolutePath(), utf8(out), utf8(err), nobody);
        return new Answer(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Who answers other programs, without a door that they could come through. */
    private Object attendance() throws ReflectiveOperationException {
        Class<?> wordsType = set.port("wickbench.api.words.Words");
        Object words = wordsType
                .getMethod("of", Class.class, String.class)
                .invoke(null, console().loadClass(CONSOLE + ".FrontDoor"), "console");
        Object calls = maker("Calls", BundleContext.class, wordsType)
                .newInstance(console().getBundleContext(), words);
        return maker("Attendance", BundleContext.class, calls.getClass(), wordsType)
                .newInstance(console().getBundleContext(), calls, words);
    }

    private Constructor<?> maker(String type, Class<?>... arguments) throws ReflectiveOperationException {
        Constructor<?> maker = console().loadClass(CONSOLE + "." + type).getDeclaredConstructor(arguments);
        maker.setAccessible(true);
        return maker;
    }

    private Bundle console() {
        return set.bundle(CONSOLE);
    }

    private static PrintStream utf8(ByteArrayOutputStream to) {
        return new PrintStream(to, true, StandardCharsets.UTF_8);
    }

    @Override
    public void close() throws IOException {
        set.close();
    }
}
