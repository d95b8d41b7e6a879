/** The view for whoever builds: what to cut, which design, what to mend, what it costs. Not here: the studies themselves. */
package simmerpoint.viewer.build;
