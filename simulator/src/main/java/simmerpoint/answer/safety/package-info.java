/** What the light of a cooker can burn, and how far away: the answer of {@code safety}. */
package simmerpoint.answer.safety;
