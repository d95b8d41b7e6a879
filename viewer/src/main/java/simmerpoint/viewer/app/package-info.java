/**
 * The window as a whole: how it starts, what its command line may say, where its parts stand, and how they are joined.
 * Not here: what a part shows or how an answer is worked out.
 */
package simmerpoint.viewer.app;
