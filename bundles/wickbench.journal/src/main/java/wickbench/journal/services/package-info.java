/** The journal and its commands as the component runtime makes them; seen by nobody. */
package wickbench.journal.services;
