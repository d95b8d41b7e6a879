/** The view for whoever cooks: where the pan stands, what it does there, when and how long. Not here: tracing. */
package simmerpoint.viewer.cook;
