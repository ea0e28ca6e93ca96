package wickbench.demo;

import java.time.Instant;
import java.util.Optional;
import wickbench.api.method.Method;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Visual;

/**
 * One strip to be run.
 *
 * @param code the label on the tube
 * @param place where the sample is from
 * @param point the sampling point, where it is one
 * @param load what is in the undiluted tube
 * @param thinned how many times thinner the liquid is made
 * @param round how many cleanings went before
 * @param tries how many strips the same sample has had before
 * @param extracted when the sample was extracted, if that was for an earlier strip
 */
record Task(
        String code,
        String place,
        Optional<Plant.Point> point,
        Method method,
        Reason reason,
        Optional<Visual> visual,
        Load load,
        int thinned,
        Optional<RunControl> control,
        int round,
        int tries,
        Optional<Instant> extracted) {

    /** Returns a control strip of a method. */
    static Task control(String code, Method method, RunControl control, Load load) {
        return new Task(
                code,
                "bench",
                Optional.empty(),
                method,
                Reason.CONTROL,
                Optional.empty(),
                load,
                1,
                Optional.of(control),
                1,
                0,
                Optional.empty());
    }

    /** Returns a sample as it is taken first. */
    static Task sample(String code, Plant.Point point, Method method, Reason reason, Load load, int round) {
        Optional<Visual> visual = method.route().swab() ? Optional.of(Visual.CLEAN) : Optional.empty();
        return new Task(
                code,
                point.name(),
                Optional.of(point),
                method,
                reason,
                visual,
                load,
                1,
                Optional.empty(),
                round,
                0,
                Optional.empty());
    }

    /** Returns a portion of the first product made. */
    static Task firstOff(String code, String place, Method method, Load load) {
        return new Task(
                code,
                place,
                Optional.empty(),
                method,
                Reason.FIRST_OFF,
                Optional.empty(),
                load,
                1,
                Optional.empty(),
                1,
                0,
                Optional.empty());
    }

    Task soiled() {
        return new Task(
                code,
                place,
                point,
                method,
                reason,
                Optional.of(Visual.SOILED),
                load,
                thinned,
                control,
                round,
                tries,
                extracted);
    }

    /** Returns another strip of the same extract, further thinned or not. */
    Task again(int thinned, Optional<Instant> extracted) {
        return new Task(
                code, place, point, method, reason, visual, load, thinned, control, round, tries + 1, extracted);
    }

    Load inTube() {
        return load.thinned(thinned);
    }
}
