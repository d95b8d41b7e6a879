/** Sheets to print for a lesson: what to do, and room to write. */
package simmerpoint.drawing.lesson;
