/**
 * All cuts and the surfaces that light meets. A new cut is one class that implements {@link simmerpoint.dish.Cut}, with a
 * surface, and one line in {@link simmerpoint.dish.cut.Cuts}.
 */
package simmerpoint.dish.cut;
