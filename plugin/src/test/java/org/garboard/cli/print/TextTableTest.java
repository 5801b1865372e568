package org.garboard.cli.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class TextTableTest {

    @Test
    void setsWordsLeftAndNumbersRight() {
        TextTable table = new TextTable("<line", "x", "<kind");
        table.row("A", "1.5", "chine");
        table.row("Sheer", "10.0", "");
        StringWriter out = new StringWriter();
        table.print(new PrintWriter(out), "> ");
        assertEquals("> line      x  kind\n> A       1.5  chine\n> Sheer  10.0\n", out.toString().replace(System.lineSeparator(), "\n"));
    }
}
