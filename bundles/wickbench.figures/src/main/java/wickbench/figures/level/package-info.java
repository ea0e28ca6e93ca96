/**
 * Levels: action levels, what a result says against them, and the arithmetic of carry-over, dilution and protein.
 *
 * <p>Decimals throughout, rounded half up: 2.9 mg in 400 g are 7.25 mg/kg, which is 7.3 with one decimal. Masses of food are in
 * kilograms or grams, of allergen in milligrams of the stated basis.
 */
@Export
@Version("1.0.0")
package wickbench.figures.level;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
