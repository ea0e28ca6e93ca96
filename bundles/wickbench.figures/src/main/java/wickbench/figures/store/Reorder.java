package wickbench.figures.store;

import wickbench.figures.Inputs;
import wickbench.figures.distribution.Normal;
import wickbench.figures.distribution.Poisson;

/**
 * When to order again.
 *
 * @param point the stock at which to order, in the unit of the demand
 * @param safety the part of it that guards against chance
 * @param leadDemand the demand expected until the delivery
 */
public record Reorder(double point, double safety, double leadDemand) {
    private static final double LARGEST = 1_000_000;

    /**
     * What is known of demand and delivery.
     *
     * @param demand d̄, a period's mean, at least 0
     * @param demandDeviation σ_d, of single periods
     * @param lead L̄, the mean time until delivery, in periods
     * @param leadDeviation σ_L, in periods
     */
    public record Supply(double demand, double demandDeviation, double lead, double leadDeviation) {
        public Supply {
            Inputs.notNegative("demand", demand);
            Inputs.notNegative("demand-sd", demandDeviation);
            Inputs.notNegative("lead", lead);
            Inputs.notNegative("lead-sd", leadDeviation);
        }
    }

    /**
     * Returns d̄L̄ + z·√(L̄σ_d² + d̄²σ_L²), with z the normal quantile of the service: the chance not to run out in one delivery time.
     * Common textbook matter.
     */
    public static Reorder normal(Supply supply, double service) {
        Inputs.level("service", service);
        double expected = supply.demand() * supply.lead();
        double ofDemand = supply.lead() * supply.demandDeviation() * supply.demandDeviation();
        double ofLead = supply.demand() * supply.leadDeviation();
        double safety = Normal.quantile(service) * Math.sqrt(ofDemand + ofLead * ofLead);
        return new Reorder(expected + safety, safety, expected);
    }

    /** Returns the smallest whole R with P(X ≤ R) ≥ service, X being Poisson with the expected demand until the delivery. */
    public static Reorder poisson(double leadDemand, double service) {
        Inputs.level("service", service);
        Inputs.within("lead-demand", leadDemand, 0, LARGEST);
        long enough = leadDemand == 0 ? 0 : new Poisson(leadDemand).quantile(service);
        return new Reorder(enough, enough - leadDemand, leadDemand);
    }

    /**
     * Returns √(2DS/H), the order that costs least (Harris, 1913).
     *
     * @param demand D, in a period
     * @param order S, the cost of placing an order
     * @param holding H, the cost of holding one for a period, in the same money
     */
    public static double economicQuantity(double demand, double order, double holding) {
        Inputs.positive("demand", demand);
        Inputs.positive("order-cost", order);
        Inputs.positive("holding-cost", holding);
        return Math.sqrt(2 * demand * order / holding);
    }
}
