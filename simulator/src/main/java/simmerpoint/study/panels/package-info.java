/**
 * What each panel of a dish sends, how much of it lands, and how to turn it so that more does. Depends on {@code study.light} and
 * {@code study.trace}.
 */
package simmerpoint.study.panels;
