package wickbench.bench.plan;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.reading.plan.PlanRequest;
import wickbench.reading.plan.PlanStrip;

/** Reads {@code 8x300+60,4x600+60}: eight strips that develop 300 s and may be read for 60 s, and four others. */
record StripList(Duration handsOn, Duration look) {
    private static final String OPTION = "--strips";
    private static final Pattern GROUP =
            Pattern.compile("(\\d{1,6})x(\\d{1,6}(?:\\.\\d{1,3})?)(?:\\+(\\d{1,6}(?:\\.\\d{1,3})?))?");
    private static final Pattern SECONDS = Pattern.compile("\\d{1,6}(?:\\.\\d{1,3})?");
    private static final int MILLI_DIGITS = 3;

    static StripList of(String handsOn, String look) {
        return new StripList(option("--hands-on", handsOn), option("--look", look));
    }

    /** Numbers the strips from 1 on. */
    List<PlanStrip> read(String list) {
        List<PlanStrip> strips = new ArrayList<>();
        for (String group : list.split(",", -1)) {
            add(group.strip(), strips);
        }
        return strips;
    }

    private void add(String group, List<PlanStrip> strips) {
        Matcher parts = GROUP.matcher(group);
        if (!parts.matches()) {
            throw bad(OPTION, PlanWords.get("input.strips", group));
        }
        int count = Integer.parseInt(parts.group(1));
        if (count < 1 || strips.size() + count > PlanRequest.MOST) {
            throw bad(OPTION, PlanWords.get("input.count", PlanRequest.MOST, group));
        }
        Duration window = parts.group(3) == null ? Duration.ZERO : seconds(parts.group(3));
        for (int i = 0; i < count; i++) {
            String number = Integer.toString(strips.size() + 1);
            strips.add(new PlanStrip(number, handsOn, seconds(parts.group(2)), window, look));
        }
    }

    private static Duration option(String name, String text) {
        if (!SECONDS.matcher(text).matches()) {
            throw bad(name, PlanWords.get("input.seconds", text));
        }
        return seconds(text);
    }

    private static Duration seconds(String text) {
        return Duration.ofMillis(
                new BigDecimal(text).movePointRight(MILLI_DIGITS).longValueExact());
    }

    private static BadInput bad(String option, String text) {
        return new BadInput(Complaint.of(option, text));
    }
}
