package org.garboard.cli.start;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** What a job that was begun after a demo boat still has in common with it, value for value. */
public final class StillTheDemos {

    private StillTheDemos() {
    }

    /** A value of a job: where its element ends, the elements it is in, and what stands there. */
    private record Value(int line, String path, String text) {
        private String known() {
            return path + "=" + text;
        }
    }

    /**
     * The values that are as in the demo's job, a line each, from the top of the file down; none where the job does not say
     * which demo it is like, or is not well formed.
     */
    public static List<String> in(String job) {
        List<String> same = new ArrayList<>();
        try {
            String like = demo(job);
            if (!Beginning.DEMOS.contains(like)) {
                return same;
            }
            Set<String> demos = new HashSet<>();
            values(Beginning.text(like, "job.xml")).forEach(value -> demos.add(value.known()));
            for (Value value : values(job)) {
                if (demos.contains(value.known())) {
                    same.add("line " + value.line() + ": " + value.path() + " is still " + value.text() + ", as of " + like);
                }
            }
        } catch (XMLStreamException notWellFormed) {
            // told by whoever reads the job
        }
        return same;
    }

    private static String demo(String job) throws XMLStreamException {
        XMLStreamReader xml = new JobText(job).reader();
        xml.nextTag();
        String like = xml.getAttributeValue(null, "like");
        return like == null ? "" : like;
    }

    private static List<Value> values(String job) throws XMLStreamException {
        List<Value> values = new ArrayList<>();
        Deque<String> path = new ArrayDeque<>();
        StringBuilder text = new StringBuilder();
        String unit = "";
        for (XMLStreamReader xml = new JobText(job).reader(); xml.hasNext(); xml.next()) {
            if (xml.isStartElement()) {
                path.addLast(xml.getLocalName());
                text.setLength(0);
                String given = xml.getAttributeValue(null, "unit");
                unit = given == null ? "" : " " + given;
            } else if (xml.isCharacters()) {
                text.append(xml.getText());
            } else if (xml.isEndElement()) {
                if (!text.toString().isBlank()) {
                    values.add(new Value(xml.getLocation().getLineNumber(), String.join(" / ", path.stream().skip(1).toList()), text.toString().strip() + unit));
                }
                path.removeLast();
                text.setLength(0);
            }
        }
        return values;
    }
}
