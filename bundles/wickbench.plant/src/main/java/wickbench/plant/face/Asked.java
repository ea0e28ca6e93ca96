package wickbench.plant.face;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.plant.order.ChangeTable;
import wickbench.plant.order.DayRequest;
import wickbench.plant.order.DayRequest.Before;
import wickbench.plant.terms.PlantWords;

/** Reads what is asked of the order: {@code PRODUCT=VALUE} each. */
record Asked(ChangeTable table, boolean round) {
    private static final Pattern PLACE = Pattern.compile("\\d{1,3}");
    private static final Pattern MINUTES = Pattern.compile("\\d{1,7}(\\.\\d{1,3})?");

    /** Options as they were typed. */
    record Typed(List<String> places, List<String> runs, List<String> due, List<String> before) {}

    /**
     * Makes the request.
     *
     * @throws BadInput when a product is unknown, a value is none, or what is asked contradicts itself
     */
    DayRequest of(Typed typed) {
        if (round
                && !(typed.places().isEmpty()
                        && typed.due().isEmpty()
                        && typed.before().isEmpty())) {
            throw new BadInput(Complaint.of("--closed", PlantWords.get("order.round")));
        }
        Set<Before> before = before(typed.before());
        return new DayRequest(
                table,
                round,
                places(typed.places()),
                minutes("--runs", typed.runs()),
                minutes("--due", typed.due()),
                before);
    }

    private Map<Integer, Integer> places(List<String> typed) {
        Map<Integer, Integer> places = new HashMap<>();
        for (String pair : typed) {
            String value = value("--at", pair);
            boolean fits = PLACE.matcher(value).matches()
                    && Integer.parseInt(value) >= 1
                    && Integer.parseInt(value) <= table.products().size();
            if (!fits) {
                throw bad("--at", PlantWords.get("order.place", table.products().size(), pair));
            }
            int place = Integer.parseInt(value) - 1;
            if (places.containsValue(place) || places.put(product("--at", pair), place) != null) {
                throw bad("--at", PlantWords.get("order.taken", pair));
            }
        }
        return places;
    }

    private Map<Integer, BigDecimal> minutes(String option, List<String> typed) {
        Map<Integer, BigDecimal> minutes = new HashMap<>();
        for (String pair : typed) {
            String value = value(option, pair);
            if (!MINUTES.matcher(value).matches() || !ChangeTable.isTime(new BigDecimal(value))) {
                throw bad(option, PlantWords.get("order.minutes", pair));
            }
            if (minutes.put(product(option, pair), new BigDecimal(value)) != null) {
                throw bad(option, PlantWords.get("order.again", pair));
            }
        }
        return minutes;
    }

    private Set<Before> before(List<String> typed) {
        Set<Before> pairs = new HashSet<>();
        for (String pair : typed) {
            pairs.add(new Before(product("--before", pair), index("--before", value("--before", pair))));
        }
        loop(pairs);
        return pairs;
    }

    /** Takes away, again and again, what nothing comes before; what is left runs in a circle. */
    private void loop(Set<Before> pairs) {
        List<Before> left = new ArrayList<>(pairs);
        boolean shrank = true;
        while (shrank) {
            Set<Integer> later = left.stream().map(Before::then).collect(Collectors.toSet());
            shrank = left.removeIf(pair -> !later.contains(pair.first()));
        }
        if (!left.isEmpty()) {
            String names = left.stream()
                    .map(pair -> table.products().get(pair.first()))
                    .distinct()
                    .sorted()
                    .collect(Collectors.joining(", "));
            throw bad("--before", PlantWords.get("order.loop", names));
        }
    }

    private int product(String option, String pair) {
        return index(option, pair.substring(0, pair.lastIndexOf('=')).strip());
    }

    private int index(String option, String name) {
        int index = table.products().indexOf(name);
        if (index < 0) {
            throw bad(option, PlantWords.get("order.unknown", name));
        }
        return index;
    }

    private static String value(String option, String pair) {
        int equals = pair.lastIndexOf('=');
        if (equals < 1) {
            throw bad(option, PlantWords.get("order.pair", pair));
        }
        return pair.substring(equals + 1).strip();
    }

    private static BadInput bad(String option, String words) {
        return new BadInput(Complaint.of(option, words));
    }
}
