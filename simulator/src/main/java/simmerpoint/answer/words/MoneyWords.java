package simmerpoint.answer.words;

import simmerpoint.quantities.OneLine;

/**
 * Amounts of money.
 *
 * @param currency any words, as the scenario has them; may be empty
 */
public record MoneyWords(String currency) {
    private static final double NO_CENTS = 100;

    /** An amount: "85 EUR" or "9.50 EUR". */
    public String amount(double amount) {
        return number(amount) + unit();
    }

    /** The same without the currency. */
    public static String number(double amount) {
        boolean whole = amount >= NO_CENTS || amount == Math.rint(amount);
        return whole ? FigureFormat.count(Math.round(amount)) : FigureFormat.fixed(amount, 2);
    }

    /** For each watt, two digits: "0.21 EUR a watt". */
    public String perWatt(double amount) {
        return FigureFormat.rounded(amount, 2) + unit() + " a" + FigureFormat.NBSP + "watt";
    }

    private String unit() {
        String name = OneLine.of(currency).strip();
        return name.isEmpty() ? "" : FigureFormat.NBSP + name;
    }
}
