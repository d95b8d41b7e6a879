package simmerpoint.scenario.keys;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import simmerpoint.units.InputText;
import simmerpoint.units.QuantityException;

/** Reads the zone of a clock: a name of the time zone database, or hours from UTC. */
final class TimeZoneParser {
    private static final Pattern OFFSET =
            Pattern.compile("(?i)(?:UTC|GMT)?\\s*([+\\-−])\\s*([0-9]{1,2})(?::?([0-9]{2}))?(?:\\s*h)?");
    private static final Pattern UTC = Pattern.compile("(?i)UTC|GMT|Z");
    private static final String ADVICE =
            "write a name such as Europe/Berlin or Africa/Nairobi, or hours from UTC such as UTC+1";
    private static final int LATEST = -12;
    private static final int EARLIEST = 14;

    /** All names but those whose sign is the other way round and those of bygone tables. */
    private static final List<String> NAMES = ZoneId.getAvailableZoneIds().stream()
            .filter(name -> !name.startsWith("Etc/") && !name.startsWith("SystemV/"))
            .sorted()
            .toList();

    private TimeZoneParser() {}

    static ZoneId zone(String typed) throws QuantityException {
        String text = InputText.normalised(typed);
        Matcher offset = OFFSET.matcher(text);
        if (offset.matches()) {
            return fromUtc(text, offset);
        }
        if (UTC.matcher(text).matches()) {
            return ZoneId.of("UTC");
        }
        if (text.toLowerCase(Locale.ROOT).startsWith("etc/gmt")) {
            throw new QuantityException(InputText.shown(text)
                    + " counts its hours the other way round; write hours from UTC such as UTC+1");
        }
        String name = text.replace(' ', '_');
        return NAMES.stream()
                .filter(n -> n.equalsIgnoreCase(name))
                .findFirst()
                .map(ZoneId::of)
                .orElseThrow(() -> new QuantityException((text.isBlank() ? "an empty name" : InputText.shown(text))
                        + " is not a known time zone; "
                        + nearest(name).map(n -> "did you mean " + n + "?").orElse(ADVICE)));
    }

    private static ZoneId fromUtc(String text, Matcher offset) throws QuantityException {
        int minutes = 60 * Integer.parseInt(offset.group(2));
        int odd = offset.group(3) == null ? 0 : Integer.parseInt(offset.group(3));
        int sum = offset.group(1).equals("+") ? minutes + odd : -minutes - odd;
        if (odd > 59 || sum < 60 * LATEST || sum > 60 * EARLIEST) {
            throw new QuantityException(
                    InputText.shown(text) + " is out of range; clocks go from UTC-12 to UTC+14, for instance UTC+5:30");
        }
        return sum == 0 ? ZoneId.of("UTC") : ZoneId.ofOffset("UTC", ZoneOffset.ofTotalSeconds(60 * sum));
    }

    /** The zone of that town, or the name spelt most alike. */
    private static Optional<String> nearest(String name) {
        Optional<String> town =
                NAMES.stream().filter(n -> town(n).equalsIgnoreCase(name)).findFirst();
        if (town.isPresent()) {
            return town;
        }
        Optional<String> whole = NearestWord.of(name, NAMES);
        if (whole.isPresent() || name.contains("/") || name.length() < 4) {
            return whole;
        }
        List<String> towns = NAMES.stream()
                .filter(n -> n.contains("/"))
                .map(TimeZoneParser::town)
                .toList();
        return NearestWord.of(name, towns)
                .flatMap(t -> NAMES.stream().filter(n -> town(n).equals(t)).findFirst());
    }

    private static String town(String name) {
        return name.substring(name.lastIndexOf('/') + 1);
    }
}
