package wickbench.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;

/** Which column of a sheet holds what; they may stand in any order. */
final class SheetColumns {
    static final List<String> ASKED = List.of(
            "sample",
            "place",
            "method",
            "route",
            "lot",
            "operator",
            "out_of_fridge",
            "extracted",
            "shaken_s",
            "started",
            "read",
            "seen");
    static final List<String> OPTIONAL =
            List.of("dilution", "batch", "line", "reason", "visual", "area_cm2", "control");

    /** A column named {@code check:NAME} holds what the method's pre-check of that name measured. */
    static final String PRE_CHECK = "check:";

    private final Map<String, Integer> places;

    private SheetColumns(Map<String, Integer> places) {
        this.places = places;
    }

    static Checked<SheetColumns> of(String source, int line, List<String> header) {
        List<Complaint> complaints = new ArrayList<>();
        Map<String, Integer> places = new LinkedHashMap<>();
        for (int i = 0; i < header.size(); i++) {
            String name = header.get(i).strip().toLowerCase(Locale.ROOT);
            if (!known(name)) {
                complaints.add(Complaint.at(source, line, name, BenchWords.get("sheet.unknown-column", allowed())));
            } else if (places.putIfAbsent(name, i) != null) {
                complaints.add(Complaint.at(source, line, name, BenchWords.get("sheet.double-column")));
            }
        }
        ASKED.stream()
                .filter(name -> !places.containsKey(name))
                .forEach(name ->
                        complaints.add(Complaint.at(source, line, name, BenchWords.get("sheet.missing-column"))));
        return complaints.isEmpty() ? Checked.good(new SheetColumns(places)) : Checked.bad(complaints);
    }

    int count() {
        return places.size();
    }

    /** Returns the cell of that column, blank where the sheet has none. */
    String cell(List<String> cells, String column) {
        Integer place = places.get(column);
        return place == null ? "" : cells.get(place).strip();
    }

    List<String> preChecks() {
        return places.keySet().stream()
                .filter(name -> name.startsWith(PRE_CHECK))
                .toList();
    }

    private static boolean known(String name) {
        return ASKED.contains(name)
                || OPTIONAL.contains(name)
                || name.startsWith(PRE_CHECK) && name.length() > PRE_CHECK.length();
    }

    private static String allowed() {
        return String.join(", ", ASKED) + ", " + String.join(", ", OPTIONAL) + ", " + PRE_CHECK + "NAME";
    }
}
