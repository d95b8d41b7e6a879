/**
 * The light around the cooker laid over its side view, and a grown-up who can be moved through it. Not here: how far light reaches, and
 * what it does.
 */
package simmerpoint.viewer.light;
