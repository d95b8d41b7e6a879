/**
 * Which of several cookers is best.
 */
package simmerpoint.answer.compare;
