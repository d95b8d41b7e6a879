package simmerpoint.sampling;

import org.apache.commons.math3.special.Erf;

/**
 * The standard normal distribution (mean 0, standard deviation 1), to almost all digits of a double. Not for the ray loop.
 */
public final class StandardNormal {
    private static final double ROOT_2 = Math.sqrt(2);
    private static final double ROOT_2_PI = Math.sqrt(2 * Math.PI);

    private StandardNormal() {}

    /** Density exp(−x²/2) / √(2π) at any {@code x}; 0 at ±∞. */
    public static double density(double x) {
        return Math.exp(-0.5 * x * x) / ROOT_2_PI;
    }

    /**
     * Probability below {@code x}, 0 to 1. Relative error 1e-12 down to 1e-300 (x about −37); it is 0 below
     * x = −38.5, where no normal double is left.
     */
    public static double cumulative(double x) {
        return 0.5 * Erf.erfc(-x / ROOT_2);
    }

    /**
     * The quantile of {@code u}: turns a uniform number into a normal one. Algorithm AS 241, routine PPND16, M. J. Wichura,
     * Applied Statistics 37 (1988) 477-484: relative error about 1e-16 for any u above 1e-316. For a small probability p
     * above x use −inverse(p), since 1 − p would lose its digits.
     *
     * @param u probability, 0 to 1; 0 gives −∞ and 1 gives +∞
     * @throws IllegalArgumentException if {@code u} is outside 0 to 1 or NaN
     */
    public static double inverse(double u) {
        if (!(u >= 0 && u <= 1)) {
            throw new IllegalArgumentException("share " + u + " is outside 0 to 1");
        }
        double q = u - 0.5;
        if (Math.abs(q) <= 0.425) {
            return q * ratio(CENTRE, 0.180625 - q * q);
        }
        double tail = q < 0 ? u : 1 - u;
        if (tail == 0) {
            return q < 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        }
        double r = Math.sqrt(-Math.log(tail));
        double x = r <= 5 ? ratio(SHOULDER, r - 1.6) : ratio(TAIL, r - 5);
        return q < 0 ? -x : x;
    }

    private static double ratio(double[][] fit, double r) {
        return polynomial(fit[0], r) / polynomial(fit[1], r);
    }

    private static double polynomial(double[] coefficients, double r) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * r + coefficients[i];
        }
        return sum;
    }

    /** Numerator and denominator for |u − ½| up to 0.425, in rising powers of 0.180625 − (u − ½)². */
    private static final double[][] CENTRE = {
        {
            3.3871328727963666080e0,
            1.3314166789178437745e2,
            1.9715909503065514427e3,
            1.3731693765509461125e4,
            4.5921953931549871457e4,
            6.7265770927008700853e4,
            3.3430575583588128105e4,
            2.5090809287301226727e3
        },
        {
            1,
            4.2313330701600911252e1,
            6.8718700749205790830e2,
            5.3941960214247511077e3,
            2.1213794301586595867e4,
            3.9307895800092710610e4,
            2.8729085735721942674e4,
            5.2264952788528545610e3
        }
    };

    /** The same beyond, for √(−ln of the tail's share) up to 5, in powers of that root − 1.6. */
    private static final double[][] SHOULDER = {
        {
            1.42343711074968357734e0,
            4.63033784615654529590e0,
            5.76949722146069140550e0,
            3.64784832476320460504e0,
            1.27045825245236838258e0,
            2.41780725177450611770e-1,
            2.27238449892691845833e-2,
            7.74545014278341407640e-4
        },
        {
            1,
            2.05319162663775882187e0,
            1.67638483018380384940e0,
            6.89767334985100004550e-1,
            1.48103976427480074590e-1,
            1.51986665636164571966e-2,
            5.47593808499534494600e-4,
            1.05075007164441684324e-9
        }
    };

    /** The same above 5, in powers of that root − 5. */
    private static final double[][] TAIL = {
        {
            6.65790464350110377720e0,
            5.46378491116411436990e0,
            1.78482653991729133580e0,
            2.96560571828504891230e-1,
            2.65321895265761230930e-2,
            1.24266094738807843860e-3,
            2.71155556874348757815e-5,
            2.01033439929228813265e-7
        },
        {
            1,
            5.99832206555887937690e-1,
            1.36929880922735805310e-1,
            1.48753612908506148525e-2,
            7.86869131145613259100e-4,
            1.84631831751005468180e-5,
            1.42151175831644588870e-7,
            2.04426310338993978564e-15
        }
    };
}
