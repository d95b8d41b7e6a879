/**
 * A cooker that was built and tried: its logs held against the model of its scenario. {@code log} reads the files, {@code power} works out
 * the figures of published test procedures, {@code fit} finds out which flaw explains what is missing. Here all of it is put together.
 * Knows no words and no pictures.
 */
package simmerpoint.trial;
