/**
 * Where the pan stands for what: its moves, the curves along them, heat levels and their borders, the place for a simmer.
 */
package simmerpoint.study.pan;
