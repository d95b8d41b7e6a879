/** The outline of a grown-up who stands in the yard, and the light on it. */
package simmerpoint.safety.person;
