/** The people of a site: entries carry ids and roles, names stand in salted files of their own that can be removed. */
package wickbench.people;
