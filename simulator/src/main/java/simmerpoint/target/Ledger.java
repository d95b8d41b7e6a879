package simmerpoint.target;

import java.util.List;
import simmerpoint.sampling.Estimate;

/**
 * Power balance of the sunlight, W, each line counted separately: outline = gap + incident; incident = shaded + mirror
 * loss + scattered + reflected; reflected = missed + caught; caught = underside + wall + lid.
 *
 * @param outline through the dish's outline
 * @param gap through hub and gaps, or on a mask
 * @param incident towards the mirrors
 * @param shaded blocked by the pan, or what it stands on, before it reaches the mirrors
 * @param mirrorLoss absorbed by the mirrors and their dust
 * @param scattered reflected diffusely
 * @param reflected reflected as a beam
 * @param missed reflected, but not caught
 * @param underside caught by the underside, or by the bare disc
 * @param wall caught by the wall
 * @param lid caught by the lid
 * @param caught by the whole target
 * @param directOnPan sunlight that comes straight from the sun onto lid and wall (closed form)
 * @param absorbed caught and direct light absorbed by the pan, less at grazing incidence; for a bare disc the same as
 *     caught
 * @param stopped part of missed: kept off by what the pan stands on
 * @param covered part of gap: on the mask over part of the mirror
 * @param zones what becomes of the light on each zone of the dish; empty where it has none
 */
public record Ledger(
        Estimate outline,
        Estimate gap,
        Estimate incident,
        Estimate shaded,
        Estimate mirrorLoss,
        Estimate scattered,
        Estimate reflected,
        Estimate missed,
        Estimate underside,
        Estimate wall,
        Estimate lid,
        Estimate caught,
        Estimate directOnPan,
        Estimate absorbed,
        Estimate stopped,
        Estimate covered,
        List<ZoneLight> zones) {
    /** Keeps a copy of the list. */
    public Ledger {
        zones = List.copyOf(zones);
    }
}
