/**
 * The dish before and after it is built: the paraboloid it follows, how that is cut into panels, the mirror
 * materials with a source in every row, and the build errors drawn once for one built dish. It knows neither
 * where the sun is nor what stands at the focus, and it follows no ray.
 */
package simmerpoint.dish;
