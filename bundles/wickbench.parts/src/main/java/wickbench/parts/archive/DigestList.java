package wickbench.parts.archive;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.journal.Hash;
import wickbench.parts.words.PartsWords;

/** The list of a set's files with their SHA-256, in the form of {@code sha256sum}: what the maker signs. */
final class DigestList {
    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  (\\S+)");

    private DigestList() {}

    static byte[] of(Map<String, byte[]> files) {
        return files.entrySet().stream()
                .map(file -> sha256(file.getValue()) + "  " + file.getKey() + "\n")
                .collect(Collectors.joining())
                .getBytes(StandardCharsets.UTF_8);
    }

    /** Ends with a refusal unless the list names exactly these files with what is in them. */
    static void hold(String source, byte[] list, Map<String, byte[]> files) {
        Map<String, String> listed = read(source, list);
        for (String name : listed.keySet()) {
            if (!files.containsKey(name)) {
                throw PartsWords.refusal("part.file-missing", source, name);
            }
        }
        files.forEach((name, bytes) -> {
            if (!listed.containsKey(name)) {
                throw PartsWords.refusal("part.file-unlisted", source, name);
            }
            if (!listed.get(name).equals(sha256(bytes))) {
                throw PartsWords.refusal("part.file-changed", source, name);
            }
        });
    }

    private static Map<String, String> read(String source, byte[] list) {
        Map<String, String> listed = new TreeMap<>();
        int number = 0;
        for (String line : new String(list, StandardCharsets.UTF_8).lines().toList()) {
            number++;
            Matcher form = LINE.matcher(line);
            if (!form.matches()) {
                throw bad(source, number, PartsWords.get("digests.form"));
            }
            if (listed.put(form.group(2), form.group(1)) != null) {
                throw bad(source, number, PartsWords.get("digests.twice", form.group(2)));
            }
        }
        return listed;
    }

    private static BadInput bad(String source, int line, String text) {
        return new BadInput(Complaint.at(source + "!" + SafeName.DIGESTS, line, "", text));
    }

    private static String sha256(byte[] bytes) {
        return Hash.ofContent(bytes).toString();
    }
}
