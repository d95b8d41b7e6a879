/**
 * The search for dishes that do what is wanted.
 */
package simmerpoint.study.design;
