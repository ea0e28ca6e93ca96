package wickbench.reading.plan;

import java.time.Duration;

/**
 * What one strip asks of the operator.
 *
 * @param name the number written on the strip; no other strip of the plan has it
 * @param handsOn work that ends in the moment in which the liquid is in the window
 * @param develop from then to the earliest reading
 * @param window how long after that the strip may still be read
 * @param look how long reading takes
 */
public record PlanStrip(String name, Duration handsOn, Duration develop, Duration window, Duration look) {
    /** Whole milliseconds count. */
    public PlanStrip {
        handsOn = Millis.whole(handsOn);
        develop = Millis.whole(develop);
        window = Millis.whole(window);
        look = Millis.whole(look);
    }
}
