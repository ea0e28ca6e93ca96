package wickbench.launcher;

import java.util.Locale;
import java.util.Map;

/** An operating system and a processor, in the words that the features use: {@code linux}, {@code x86_64}. */
public record Platform(String os, String arch) {

    public static Platform here() {
        return of(System.getProperty("os.name"), System.getProperty("os.arch"));
    }

    /** Takes the names that Java uses. */
    public static Platform of(String osName, String osArch) {
        String os = osName.toLowerCase(Locale.ROOT);
        String word = os.startsWith("windows") ? "win32" : os.startsWith("mac") ? "macosx" : os;
        return new Platform(word, osArch.equals("amd64") ? "x86_64" : osArch);
    }

    /** Metadata that names no system or no processor suits any. */
    boolean suits(Map<String, Object> metadata) {
        return os.equals(metadata.getOrDefault("os", os)) && arch.equals(metadata.getOrDefault("arch", arch));
    }
}
