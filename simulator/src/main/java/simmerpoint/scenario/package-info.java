/**
 * A scenario as plain values in SI units, and what can be wrong with one. Its sub-packages know the scenario file, each those
 * before it: {@code keys} describes every key, {@code yaml} reads and changes text, {@code values} holds what is given at every
 * key, {@code checks} makes a scenario of values, {@code file} reads files, {@code variants} varies keys.
 */
package simmerpoint.scenario;
