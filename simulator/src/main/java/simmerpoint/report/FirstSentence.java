package simmerpoint.report;

import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;

/** The sentence with which an answer begins. */
final class FirstSentence {
    private FirstSentence() {}

    static String of(Answer answer) {
        return ((Item.Sentence) answer.sections().get(0).items().get(0)).text();
    }
}
