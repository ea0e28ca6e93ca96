package wickbench.tests;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;

/** The message files in jars, by bundle and name: {@code wickbench.stock/commands}. */
record MessageFiles(Map<String, Map<String, String>> byName) {
    private static final String FOLDER = "OSGI-INF/l10n/";
    private static final String ENDING = ".properties";

    /** Reads the files whose names end in {@code suffix}: {@code _es}, or nothing for English. */
    static MessageFiles in(List<Path> jars, String suffix) {
        Map<String, Map<String, String>> files = new TreeMap<>();
        for (Path jar : jars) {
            String bundle = jar.getParent().getParent().getFileName().toString();
            read(jar, suffix).forEach((name, words) -> files.put(bundle + "/" + name, words));
        }
        return new MessageFiles(files);
    }

    private static Map<String, Map<String, String>> read(Path jar, String suffix) {
        Map<String, Map<String, String>> files = new TreeMap<>();
        try (JarFile file = new JarFile(jar.toFile())) {
            for (JarEntry entry : file.stream().toList()) {
                if (entry.getName().startsWith(FOLDER) && entry.getName().endsWith(suffix + ENDING)) {
                    String name = entry.getName().substring(FOLDER.length());
                    files.put(name.substring(0, name.length() - suffix.length() - ENDING.length()), words(file, entry));
                }
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return files;
    }

    private static Map<String, String> words(JarFile file, JarEntry entry) throws IOException {
        Properties words = new Properties();
        try (Reader text = new InputStreamReader(file.getInputStream(entry), StandardCharsets.UTF_8)) {
            words.load(text);
        }
        Map<String, String> all = new TreeMap<>();
        words.stringPropertyNames().forEach(key -> all.put(key, words.getProperty(key)));
        return all;
    }
}
