/**
 * Which dishes do what is wanted.
 */
package simmerpoint.answer.design;
