/** What logs of a trial say, in words. */
package simmerpoint.answer.trial;
