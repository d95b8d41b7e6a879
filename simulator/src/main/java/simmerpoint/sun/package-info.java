/**
 * The sunlight that arrives: how radiance is spread over the sun's disc and the ring around it, how high the
 * sun stands, and how strong its beam is. Where the dish points and what the light meets is none of its
 * business.
 */
package simmerpoint.sun;
