/**
 * From when to when it cooks on a day, hour by hour, and through a year.
 */
package simmerpoint.study.day;
