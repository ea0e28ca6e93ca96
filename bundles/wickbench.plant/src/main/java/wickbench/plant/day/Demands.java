package wickbench.plant.day;

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
import wickbench.plant.terms.PlantTerms;

/**
 * Reads what is asked of the order of a day, {@code PRODUCT=VALUE} each.
 *
 * @param round the line is changed back to the first product in the end; then nothing else can be asked
 * @param names what is named when something cannot be
 */
public record Demands(ChangeTable table, boolean round, Names names) {
    private static final Pattern PLACE = Pattern.compile("\\d{1,3}");
    private static final Pattern MINUTES = Pattern.compile("\\d{1,7}(\\.\\d{1,3})?");

    /** What each demand is called where it is typed. */
    public record Names(String places, String runs, String due, String before) {
        public static final Names OPTIONS = new Names("--at", "--runs", "--due", "--before");
    }

    /**
     * Demands as they were typed.
     *
     * @param places {@code PRODUCT=PLACE}, counted from 1
     * @param runs {@code PRODUCT=MINUTES} for which it is made
     * @param due {@code PRODUCT=MINUTES} from the start, by when it must be finished
     * @param before {@code FIRST=THEN}
     */
    public record Typed(List<String> places, List<String> runs, List<String> due, List<String> before) {
        public Typed {
            places = List.copyOf(places);
            runs = List.copyOf(runs);
            due = List.copyOf(due);
            before = List.copyOf(before);
        }
    }

    /**
     * Makes the request.
     *
     * @throws BadInput when a product is unknown, a value is none, or what is asked contradicts itself
     */
    public DayRequest of(Typed typed) {
        if (round
                && !(typed.places().isEmpty()
                        && typed.due().isEmpty()
                        && typed.before().isEmpty())) {
            throw new BadInput(Complaint.of("--closed", PlantTerms.said("order.round")));
        }
        Set<Before> before = before(typed.before());
        return new DayRequest(
                table,
                round,
                places(typed.places()),
                minutes(names.runs(), typed.runs()),
                minutes(names.due(), typed.due()),
                before);
    }

    private Map<Integer, Integer> places(List<String> typed) {
        Map<Integer, Integer> places = new HashMap<>();
        for (String pair : typed) {
            String value = value(names.places(), pair);
            boolean fits = PLACE.matcher(value).matches()
                    && Integer.parseInt(value) >= 1
                    && Integer.parseInt(value) <= table.products().size();
            if (!fits) {
                throw bad(
                        names.places(),
                        PlantTerms.said("order.place", table.products().size(), pair));
            }
            int place = Integer.parseInt(value) - 1;
            if (places.containsValue(place) || places.put(product(names.places(), pair), place) != null) {
                throw bad(names.places(), PlantTerms.said("order.taken", pair));
            }
        }
        return places;
    }

    private Map<Integer, BigDecimal> minutes(String option, List<String> typed) {
        Map<Integer, BigDecimal> minutes = new HashMap<>();
        for (String pair : typed) {
            String value = value(option, pair);
            if (!MINUTES.matcher(value).matches() || !ChangeTable.isTime(new BigDecimal(value))) {
                throw bad(option, PlantTerms.said("order.minutes", pair));
            }
            if (minutes.put(product(option, pair), new BigDecimal(value)) != null) {
                throw bad(option, PlantTerms.said("order.again", pair));
            }
        }
        return minutes;
    }

    private Set<Before> before(List<String> typed) {
        Set<Before> pairs = new HashSet<>();
        for (String pair : typed) {
            pairs.add(new Before(product(names.before(), pair), index(names.before(), value(names.before(), pair))));
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
            String circle = left.stream()
                    .map(pair -> table.products().get(pair.first()))
                    .distinct()
                    .sorted()
                    .collect(Collectors.joining(", "));
            throw bad(names.before(), PlantTerms.said("order.loop", circle));
        }
    }

    private int product(String option, String pair) {
        return index(option, pair.substring(0, pair.lastIndexOf('=')).strip());
    }

    private int index(String option, String name) {
        int index = table.products().indexOf(name);
        if (index < 0) {
            throw bad(option, PlantTerms.said("order.unknown", name));
        }
        return index;
    }

    private static String value(String option, String pair) {
        int equals = pair.lastIndexOf('=');
        if (equals < 1) {
            throw bad(option, PlantTerms.said("order.pair", pair));
        }
        return pair.substring(equals + 1).strip();
    }

    private static BadInput bad(String option, String words) {
        return new BadInput(Complaint.of(option, words));
    }
}
