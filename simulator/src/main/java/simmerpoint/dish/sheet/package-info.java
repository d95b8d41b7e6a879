/** Sheet materials that ribs and panels are cut from. */
package simmerpoint.dish.sheet;
