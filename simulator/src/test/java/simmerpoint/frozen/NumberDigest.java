package simmerpoint.frozen;

import java.lang.reflect.Array;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** All numbers of a result, by their path in it; of an array its sum and a sum in which every place counts otherwise. */
public final class NumberDigest {
    private static final double WEIGHT_STEP = 0.37;

    private final Map<String, Double> numbers = new TreeMap<>();

    /** Adds whatever numbers are in {@code value}: records, arrays, lists and options of them; anything else is passed over. */
    public NumberDigest add(String path, Object value) {
        if (value instanceof Number number) {
            numbers.put(path, number.doubleValue());
        } else if (value instanceof Boolean yes) {
            numbers.put(path, yes ? 1.0 : 0.0);
        } else if (value instanceof Optional<?> optional) {
            numbers.put(path + ".present", optional.isPresent() ? 1.0 : 0.0);
            optional.ifPresent(inner -> add(path, inner));
        } else if (value instanceof List<?> list) {
            numbers.put(path + ".size", (double) list.size());
            for (int i = 0; i < list.size(); i++) {
                add(path + "." + i, list.get(i));
            }
        } else if (value instanceof Record parts && !parts.getClass().getName().contains(".scenario.")) {
            record(path, parts);
        } else if (value != null
                && value.getClass().isArray()
                && value.getClass().getComponentType().isPrimitive()) {
            array(path, value);
        }
        return this;
    }

    private void record(String path, Record parts) {
        for (RecordComponent part : parts.getClass().getRecordComponents()) {
            try {
                part.getAccessor().setAccessible(true);
                add(path + "." + part.getName(), part.getAccessor().invoke(parts));
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    private void array(String path, Object array) {
        double sum = 0;
        double weighted = 0;
        for (int i = 0; i < Array.getLength(array); i++) {
            double value = Array.getDouble(array, i);
            sum += value;
            weighted += value * Math.sin(WEIGHT_STEP * (i + 1));
        }
        numbers.put(path + ".sum", sum);
        numbers.put(path + ".weighted", weighted);
    }

    Map<String, Double> numbers() {
        return numbers;
    }
}
