package org.garboard.drawing.svg;

import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.garboard.drawing.Box;
import org.garboard.drawing.Flattened;
import org.garboard.drawing.Layer;
import org.garboard.drawing.View;

/** Writes a view into a page of HTML: as wide as the page lets it be, its letters read out as title and description. */
public final class InlineSvg {
    /** Clear paper round it [mm]: our choice. */
    private static final double MARGIN = 1;

    private InlineSvg() {
    }

    /**
     * Writes the element.
     *
     * @param id of title and description, once in the page
     * @param title what it is
     * @param description what it shows, for who cannot see it
     */
    public static void write(View view, String id, String title, String description, XMLStreamWriter xml) throws XMLStreamException {
        Box box = view.frame().grownBy(MARGIN);
        SvgElements svg = new SvgElements(xml, box.height());
        svg.startInside();
        svg.attribute("viewBox", "0 0 " + SvgElements.number(box.width()) + " " + SvgElements.number(box.height()));
        svg.attribute("role", "img");
        svg.attribute("aria-labelledby", id + "-title " + id + "-description");
        svg.attribute("font-family", SheetSvg.FACES);
        svg.labelled("title", id + "-title", title);
        svg.labelled("desc", id + "-description", description);
        Flattened flattened = Flattened.of(view.movedBy(-box.left(), -box.bottom()));
        for (Layer layer : Layer.values()) {
            if (!flattened.on(layer).isEmpty()) {
                svg.startPen(layer);
                SvgCanvas.draw(flattened.on(layer), svg);
                svg.end();
            }
        }
        svg.end();
    }
}
