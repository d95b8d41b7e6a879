package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import simmerpoint.quantities.Document;
import simmerpoint.quantities.Documents;

class SchemaCommandTest extends CommandRuns {
    @Test
    void printsTheSchemaOfEveryCommand() {
        for (Document<?> document : Documents.ALL) {
            assertEquals(0, run("schema", document.command()), err());
            assertEquals(document.schema(), out(), document.command());
        }
    }

    @Test
    void saysWhichSchemasThereAre() {
        assertEquals(2, run("schema", "soup"));
        assertTrue(err().contains("there is no schema of soup, only of trace, pan, day, year, aim"), err());
    }
}
