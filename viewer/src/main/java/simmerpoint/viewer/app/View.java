package simmerpoint.viewer.app;

import java.util.Locale;

/** The views of a design, by what a builder wants now. */
enum View {
    /** Where the pan stands and what it does, now and over the day. */
    COOK("Cook", "Where does the pan stand, and what does it do there?"),
    /** What is cut, which design is better, what is worth mending. */
    BUILD("Build", "What is cut, which design is better, what is worth mending?"),
    /** Where the light goes and how sure that is. */
    UNDERSTAND("Understand", "Where does the light go, and how sure is that?");

    private final String title;
    private final String question;

    View(String title, String question) {
        this.title = title;
        this.question = question;
    }

    String title() {
        return title;
    }

    String question() {
        return question;
    }

    /** As it is typed, and as part of ids. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
