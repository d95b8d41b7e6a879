/**
 * What the window asks of whoever sits before it, and what it tells them: which file, yes or no, what went wrong. Behind
 * interfaces, so that tests can answer. Not here: what is then done.
 */
package simmerpoint.viewer.dialog;
