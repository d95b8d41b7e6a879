/** What every view of the window works on: the open scenario, its results, units, colours. Not here: anything that is seen. */
package simmerpoint.viewer.workspace;
