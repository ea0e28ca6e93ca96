/** What the tests of several bundles share. */
package wickbench.testing;
