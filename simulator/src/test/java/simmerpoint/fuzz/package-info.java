/**
 * Input broken at random, to see that it is refused in one sentence or answered within the laws of light. A few cases run
 * with all tests; {@code mvn -P fuzz test -pl simulator} runs ten thousand of each kind.
 */
package simmerpoint.fuzz;
