package simmerpoint.quantities;

import simmerpoint.target.Ledger;

/** The lines of the ledger. */
final class LedgerQuantities {
    static final Fields<Ledger> FIELDS = Fields.<Ledger>none()
            .estimate("outline_power_W", "sunlight through the dish's outline", Ledger::outline)
            .estimate("gap_power_W", "through hub and gaps, or on a mask", Ledger::gap)
            .estimate("incident_power_W", "towards the mirrors", Ledger::incident)
            .estimate("shaded_power_W", "kept off the mirrors by the pan", Ledger::shaded)
            .estimate("mirror_loss_power_W", "gone into the mirrors and their dust", Ledger::mirrorLoss)
            .estimate("scattered_power_W", "left the mirrors diffusely", Ledger::scattered)
            .estimate("reflected_power_W", "left the mirrors as a beam", Ledger::reflected)
            .estimate("missed_power_W", "reflected but not caught", Ledger::missed)
            .estimate("underside_power_W", "caught by the underside or the bare disc", Ledger::underside)
            .estimate("wall_power_W", "caught by the wall", Ledger::wall)
            .estimate("lid_power_W", "caught by the lid", Ledger::lid)
            .estimate("caught_power_W", "caught by the pan or the bare disc", Ledger::caught)
            .estimate("direct_on_pan_power_W", "straight from the sun onto lid and wall", Ledger::directOnPan)
            .estimate("absorbed_power_W", "taken up by the pan; of a bare disc the same as caught", Ledger::absorbed)
            .estimate("stopped_power_W", "part of missed: stopped by grate or arm under the pan", Ledger::stopped)
            .estimate("covered_power_W", "part of gap: on the mask over part of the mirror", Ledger::covered);

    private LedgerQuantities() {}
}
