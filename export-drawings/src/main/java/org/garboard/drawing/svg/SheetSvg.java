package org.garboard.drawing.svg;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import org.garboard.drawing.Flattened;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Sheet;

/** Writes a sheet as SVG in true paper millimetres. */
public final class SheetSvg {

    static final String FACES = "'Liberation Sans',Arial,Helvetica,sans-serif";

    private SheetSvg() {
    }

    /** Writes the whole file; the same sheet gives the same bytes. */
    public static void write(Sheet sheet, OutputStream out) throws IOException {
        // a writer, not the stream: the platform's XML writer breaks letters beyond the first plane on a stream
        Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        try {
            SvgElements svg = new SvgElements(
                    XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(writer), sheet.height());
            root(svg, sheet);
            Flattened flattened = Flattened.of(sheet);
            for (Layer layer : Layer.values()) {
                if (!flattened.on(layer).isEmpty()) {
                    svg.startLayer(layer);
                    SvgCanvas.draw(flattened.on(layer), svg);
                    svg.end();
                }
            }
            svg.endDocument();
        } catch (XMLStreamException e) {
            throw new IOException("SVG of " + sheet.title() + ": " + e.getMessage(), e);
        }
        writer.flush();
    }

    private static void root(SvgElements svg, Sheet sheet) throws XMLStreamException {
        String width = SvgElements.number(sheet.width());
        String height = SvgElements.number(sheet.height());
        svg.startDocument();
        svg.attribute("width", width + "mm");
        svg.attribute("height", height + "mm");
        svg.attribute("viewBox", "0 0 " + width + " " + height);
        svg.attribute("role", "img");
        svg.attribute("aria-labelledby", "sheet-title sheet-description");
        svg.attribute("font-family", FACES);
        svg.labelled("title", "sheet-title", sheet.title());
        svg.labelled("desc", "sheet-description", sheet.description());
        svg.empty("rect", "id", "PAPER", "width", width, "height", height, "fill", "#fff", "stroke", "none");
    }
}
