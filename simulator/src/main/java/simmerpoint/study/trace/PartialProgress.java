package simmerpoint.study.trace;

/**
 * The progress of one part of longer work.
 *
 * @param whole told of it
 * @param from share of the whole work at which the part begins
 * @param to share at which it ends
 */
public record PartialProgress(Progress whole, double from, double to) implements Progress {
    @Override
    public boolean report(double done, String detail) {
        return whole.report(from + (to - from) * done, detail);
    }
}
