/**
 * Results put into shape for others: tables, pictures, CSV and JSON, each by a small writer that is handed
 * finished values. Files are replaced whole or not at all. No figure is computed here that a study or an
 * answer could have given.
 */
package simmerpoint.report;
