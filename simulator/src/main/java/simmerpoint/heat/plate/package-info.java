/**
 * The sheet of a pan as a thin shell of given material and thickness: how hot it gets from place to place under the light that
 * falls on it, dry, under water and under food that lies still. A warped pan needs nothing special: light heats a sheet
 * wherever it stands, and there is no hob to touch.
 *
 * <p>Losses come from {@code heat.losses}; nothing here knows a scenario.
 */
package simmerpoint.heat.plate;
