/** The site profile: read, issued, and in force. */
package wickbench.people.profile;
