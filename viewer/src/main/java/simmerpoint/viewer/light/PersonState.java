package simmerpoint.viewer.light;

import simmerpoint.answer.safety.PersonWords;
import simmerpoint.safety.YardRisks;
import simmerpoint.safety.person.PersonLight;
import simmerpoint.units.UnitSystem;

/**
 * The grown-up beside a cooker, and the light there.
 *
 * @param found the light of the cooker
 * @param panTaken whether its pan is taken away
 * @param person where the grown-up stands, with the strongest light there
 */
public record PersonState(LightFound found, boolean panTaken, PersonLight person) {
    /**
     * The state as chosen.
     *
     * @param low leftmost place, m
     * @param high rightmost place, m
     */
    public static PersonState of(LightFound found, LightChoice choice, double low, double high) {
        boolean panTaken = choice.panTakenProperty().get();
        double chosen = choice.personProperty().get().orElse(safe(found));
        double place = Math.max(low, Math.min(high, chosen));
        return new PersonState(
                found, panTaken, PersonLight.of(found.risks(panTaken).light(), place));
    }

    /** As near as is safe with the pan in place or without it. */
    public static double safe(LightFound found) {
        return PersonLight.standing(found.scenario(), found.light().people());
    }

    /** All of the light. */
    public YardRisks risks() {
        return found.risks(panTaken);
    }

    /** One step of the keys. */
    static double step(UnitSystem units, boolean large) {
        boolean metric = units == UnitSystem.METRIC;
        double few = metric ? 5 : 2;
        return (large ? 5 * few : few) * units.shortUnitMetres();
    }

    /** "135 cm from the focus". */
    public String gap(UnitSystem units) {
        return PersonWords.gap(person, units);
    }

    /** How near it stands and what the light does there, in few words. */
    public String brief(UnitSystem units) {
        return PersonWords.brief(person, units);
    }

    /** Where it stands, and what the light does there. */
    public String words(UnitSystem units) {
        return PersonWords.place(person, found.scenario(), units) + ". " + PersonWords.sentence(person, units);
    }
}
