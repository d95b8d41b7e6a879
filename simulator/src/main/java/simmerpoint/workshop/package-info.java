/**
 * What to cut for the dish that is traced: ribs, panels, film, how they lie on sheets, what it all weighs. Lengths come from the
 * dish's own geometry; nothing here traces a ray, writes a file or words a sentence.
 */
package simmerpoint.workshop;
