/** What the framework makes of this bundle: the index service and its commands. */
package wickbench.index.services;
