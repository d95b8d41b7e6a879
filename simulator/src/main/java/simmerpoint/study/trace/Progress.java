package simmerpoint.study.trace;

/** What long work tells whoever waits, and asks whether to go on. Called from the thread that started the work. */
public interface Progress {
    /** Tells nobody and is never cancelled. */
    Progress NONE = (done, detail) -> true;

    /**
     * Called now and then.
     *
     * @param done share of the work that is done, 0 to 1
     * @param detail a few words on the state, for instance "1048576 rays, ±0.31 %"
     * @return whether to go on; false stops the work with a {@link java.util.concurrent.CancellationException}
     */
    boolean report(double done, String detail);
}
