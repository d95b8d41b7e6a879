/**
 * Dialogs with the user, behind interfaces so that tests can answer, and the export of files.
 */
package simmerpoint.viewer.dialog;
