/**
 * When to start and when to read each strip, so that one pair of hands and eyes reads every strip inside its window.
 *
 * <p>{@link wickbench.reading.plan.RunPlanner} makes the plan, {@link wickbench.reading.plan.PlanCheck} proves by its own
 * reckoning that a plan can be done. Pure: no clock; times count from the moment for which the plan is made. In the literature
 * a strip is a <em>coupled task</em>, two operations of one machine with a delay between them: Shapiro (1980), Scheduling
 * coupled tasks, Naval Research Logistics Quarterly 27; Orman and Potts (1997), On the complexity of coupled-task
 * scheduling, Discrete Applied Mathematics 72.
 */
@Export
@Version("1.0.0")
package wickbench.reading.plan;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
