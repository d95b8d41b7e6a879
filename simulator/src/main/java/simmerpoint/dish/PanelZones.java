package simmerpoint.dish;

/** Which zone of a dish a panel belongs to: zones and the panels of each are numbered one after the other. */
public final class PanelZones {
    /** A dish of one zone. */
    public static final PanelZones ONE = new PanelZones(0);

    private final int[] first;

    /** Of zones that begin with these panels, the first with 0. */
    public PanelZones(int... first) {
        this.first = first.clone();
    }

    /** Number of zones. */
    public int count() {
        return first.length;
    }

    /** Number of the first panel of a zone. */
    public int firstPanel(int zone) {
        return first[zone];
    }

    /** Zone of panel {@code panel}; 0 for a place without a panel, below 0. */
    public int of(int panel) {
        int zone = first.length - 1;
        while (zone > 0 && panel < first[zone]) {
            zone--;
        }
        return zone;
    }
}
