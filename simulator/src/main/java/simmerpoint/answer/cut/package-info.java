/** What to cut, in words. */
package simmerpoint.answer.cut;
