/** Places of the yard that somebody asks about, by name: what light falls on them and how soon it harms them. */
package simmerpoint.safety.places;
