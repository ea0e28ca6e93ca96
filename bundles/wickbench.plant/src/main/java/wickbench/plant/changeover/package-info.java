/**
 * What a change from one product to another asks for: which clean, which tests, where.
 *
 * <p>Everything follows from what is stated of products, points, cleans and issued methods; what no method covers is a fault of its
 * own and forbids the change in any order of the day.
 */
@Export
@Version("1.0.0")
package wickbench.plant.changeover;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
