/** What an install set says of itself: its name and version, its bundles, and the sets it stands on. */
package wickbench.parts.plan;
