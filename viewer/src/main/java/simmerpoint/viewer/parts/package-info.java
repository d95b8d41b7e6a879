/**
 * What several views are made of: tabs of questions, answers in words, drawings, studies that are started and stopped. Not here:
 * what any one view asks.
 */
package simmerpoint.viewer.parts;
