/**
 * Light that is cast once and kept, to be caught anew while the pan moves; which scenarios have the same light; what each
 * panel sends and lands.
 */
package simmerpoint.study.light;
