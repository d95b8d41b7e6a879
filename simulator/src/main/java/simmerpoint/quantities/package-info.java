/**
 * What a study found, declared once: {@link simmerpoint.quantities.Fields} lists the figures of a result by key, label,
 * unit and error, grouped and in rows, and {@link simmerpoint.quantities.Document} joins them to the file of a command.
 * JSON, CSV, JSON Schema and tables are each one renderer over these declarations. Nothing is worked out here, and no
 * sentence is worded.
 */
package simmerpoint.quantities;
