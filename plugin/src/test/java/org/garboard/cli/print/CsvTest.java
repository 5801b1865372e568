package org.garboard.cli.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class CsvTest {

    /** RFC 4180, section 2: rules 1, 5, 6 and 7. */
    @Test
    void published_fieldsAreQuotedWhereTheRuleAsks() {
        StringWriter out = new StringWriter();
        new Csv(new PrintWriter(out)).row("plain", "with, comma", "a \"quote\"", "two\nlines", "");
        assertEquals("plain,\"with, comma\",\"a \"\"quote\"\"\",\"two\nlines\",\r\n", out.toString());
    }

    @Test
    void numbersThatAreNotKnownAreEmpty() {
        assertEquals("", Csv.number(Double.NaN, 3));
        assertEquals("INF", Csv.number(Double.POSITIVE_INFINITY, 3));
        assertEquals("-0.500", Csv.number(-0.5, 3));
    }

    /** A job, a boat, a transducer or a line of the table may be named so by whoever wrote the file. */
    @Test
    void noFieldIsAFormula() {
        StringWriter out = new StringWriter();
        new Csv(new PrintWriter(out)).row("=HYPERLINK(1)", "+1+1", "-2-3-4", "@SUM(A1)", "\t=1", "a=1", "-0.500", "-INF", "+1");
        assertEquals("'=HYPERLINK(1),'+1+1,'-2-3-4,'@SUM(A1),'\t=1,a=1,-0.500,-INF,+1\r\n", out.toString());
    }
}
