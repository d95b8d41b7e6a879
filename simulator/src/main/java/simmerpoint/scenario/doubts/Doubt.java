package simmerpoint.scenario.doubts;

import simmerpoint.uncertainty.Distribution;

/**
 * How badly one figure is known.
 *
 * @param cause the key, or the name of what has none, for instance losses.dry
 * @param name what the reader is told, for instance "dust on the mirror"; several causes may share it
 * @param law how likely its values are, SI units or radians; a factor or a difference for what is no key
 * @param size how wide that is, in words
 * @param given whether the file says so
 * @param source who says so
 * @param measurement what would tell it better, as an order to the reader
 */
public record Doubt(
        String cause,
        String name,
        Distribution law,
        DoubtSize size,
        boolean given,
        String source,
        String measurement) {}
