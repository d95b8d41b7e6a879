package simmerpoint.viewer.yard;

import java.util.Map;

/** Where the yard sends what hands do in it: keys of the scenario with values as typed in a file. */
public interface YardEdits {
    /** What follows belongs together. */
    void begin();

    /** Gives keys values. */
    void change(Map<String, String> typed);

    /** What belongs together is complete. */
    void end();

    /** What began is taken back. */
    void cancel();
}
