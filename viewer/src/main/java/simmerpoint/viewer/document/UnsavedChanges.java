package simmerpoint.viewer.document;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/** The question before a document with changes is closed. */
final class UnsavedChanges {
    private UnsavedChanges() {}

    static Optional<String> sentence(String title, DocumentState state, boolean changed) {
        Set<String> wrong = new LinkedHashSet<>(state.pending().typed().keySet());
        wrong.addAll(state.pending().dropped());
        if (!changed && wrong.isEmpty()) {
            return Optional.empty();
        }
        String keys = String.join(", ", wrong);
        String waiting = wrong.size() == 1
                ? "the value typed for " + keys + " cannot be used and is not saved with it."
                : "the values typed for " + keys + " cannot be used and are not saved with it.";
        if (!changed) {
            return Optional.of("“" + title + "” is saved, but " + waiting);
        }
        String sentence = "“" + title + "” has changes that are not saved";
        return Optional.of(wrong.isEmpty() ? sentence + "." : sentence + "; " + waiting);
    }
}
