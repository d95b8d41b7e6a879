package simmerpoint.trial;

import simmerpoint.trial.log.TrialLog;

/**
 * Something to know about a log.
 *
 * @param kind what
 * @param log which
 */
public record TrialNote(Kind kind, TrialLog log) {
    /** What there is to know. */
    public enum Kind {
        /** The air is not in it: the scenario's is taken. */
        AIR_OF_SCENARIO,
        /** The wind is not in it. */
        WIND_OF_SCENARIO,
        /** No light is in it. */
        LIGHT_OF_SCENARIO,
        /** All light is in it and not the beam, which is taken as a share. */
        BEAM_AS_SHARE,
        /** It cools from first to last and does not say that it had no sun. */
        TAKEN_AS_COOLING,
        /** The water boils or nearly boils from the first row: nothing to learn from its rise. */
        BOILS_FROM_FIRST,
        /** It is too short for the standard's line. */
        TOO_SHORT,
        /** It is of another arrangement than the first one and not counted for the standard's figure. */
        OTHER_ARRANGEMENT
    }
}
