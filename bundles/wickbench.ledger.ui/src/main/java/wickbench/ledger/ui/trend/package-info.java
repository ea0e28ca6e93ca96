/** The page Trend: whether something has changed in the first tests after a clean, where, and which strips are behind it. */
package wickbench.ledger.ui.trend;
