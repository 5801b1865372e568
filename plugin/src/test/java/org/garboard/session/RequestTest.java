package org.garboard.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RequestTest {

    @Test
    void wordsStandBetweenBlanks() throws BadRequest {
        assertEquals(new Request("a-1", List.of("site", "job.xml", "--at", "5.2,0.3")), Request.of("a-1\tsite  job.xml --at 5.2,0.3 "));
    }

    @Test
    void quotesHoldBlanksTabsAndThemselves() throws BadRequest {
        assertEquals(List.of("run", "C:\\Boats\\Anna B\\job.xml", "--out", "", "say \"no\"\tand\nnext"),
            Request.of("1\trun C:\\Boats\\\"Anna B\\\\job.xml\" --out \"\" \"say \\\"no\\\"\\tand\\nnext\"").words());
    }

    @Test
    void argumentsMayHoldTabsAndBeNone() throws BadRequest {
        assertEquals(List.of("a\tb"), Request.of("1\ta\tb").words());
        assertEquals(List.of(), Request.of("1\t").words());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', value = {
        "site job.xml|\"site job.xml\" is no request: no tab stands in it; write a name, a tab, the arguments",
        "a b$site|\"a b\" names no request; write 1 to 64 letters, digits, points, hyphens",
        "$site|\"\" names no request; write 1 to 64 letters, digits, points, hyphens",
        "1$site \"job.xml --csv|a quote is opened and not closed: \"job.xml --csv",
        "1$site \"a\\|\"\\\" stands in quotes; \\\", \\\\, \\t and \\n are known there",
        "1$site \"C:\\new\\boat\"|\"\\b\" stands in quotes; \\\", \\\\, \\t and \\n are known there"})
    void linesThatAreNoRequests(String line, String message) {
        BadRequest bad = assertThrows(BadRequest.class, () -> Request.of(line.replace('$', '\t')));
        assertEquals(message, bad.getMessage());
    }
}
