/**
 * Energy balance of pan and water: steady state, temperature history, time to boil, heat levels, and standard tests.
 */
package simmerpoint.heat.balance;
