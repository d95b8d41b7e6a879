/**
 * What the light of a dish can burn, light or blind: the light in the space around it ({@code field}), what such light does to
 * people and things ({@code risk}), a dish that is left uncovered ({@code parked}), and the studies that put them together. Values
 * only: sentences are written in {@code answer}.
 */
package simmerpoint.safety;
