/**
 * The likely range of what a cooker does: many possible cookers, each with the figures of one draw of the doubts and glued anew, traced
 * with few rays; how far they differ, and which doubt that comes from.
 */
package simmerpoint.study.likely;
