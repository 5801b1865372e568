package org.garboard.drawing;

import java.util.List;

/** A sheet that holds one of everything, at 1:5 on 297 x 210 mm. */
public final class SampleSheet {

    private SampleSheet() {
    }

    public static Sheet everything() {
        return with("Boat \"Größe\" & Co <7>");
    }

    /** The same with a note of one's own. */
    public static Sheet with(String note) {
        List<Entity> shown = List.of(
                new Line(Layer.HULL, new Point(30, 40), new Point(130, 40)),
                new Arc(Layer.HULL, new Point(60, 60), 10, 30, 210),
                new Circle(Layer.CUT, new Point(60, 60), 12.5),
                new Polyline(Layer.POCKET, Polyline.Run.CLOSED, List.of(
                        Vertex.corner(new Point(150, 60)), new Vertex(new Point(170, 60), 1),
                        Vertex.corner(new Point(170, 70)), new Vertex(new Point(150, 70), -0.5))),
                Polyline.open(Layer.CENTRE, List.of(new Point(30, 100), new Point(90, 110), new Point(200, 100))),
                Text.level(Layer.TEXT, note, new Point(30, 120), 3.5, Anchor.LEFT),
                new Text(Layer.TEXT, "21.5° Ø36 ±2 mm", new Point(250, 60), 3.5, Anchor.MIDDLE, 90),
                new Hatch(Layer.HATCH, List.of(
                        List.of(new Point(200, 20), new Point(240, 20), new Point(240, 45), new Point(200, 45)),
                        List.of(new Point(210, 25), new Point(210, 35), new Point(220, 35), new Point(220, 25))),
                        45, 2.5),
                new LinearDimension(LinearDimension.Direction.HORIZONTAL, new Point(30, 40), new Point(130, 40),
                        new Point(80, 30), "500", 3.5),
                new LinearDimension(LinearDimension.Direction.VERTICAL, new Point(200, 20), new Point(200, 45),
                        new Point(190, 30), "125 (0'-4 7/8\")", 3.5),
                new LinearDimension(LinearDimension.Direction.ALIGNED, new Point(30, 140), new Point(60, 180),
                        new Point(30, 150), "250.0", 3.5),
                new AngularDimension(new Point(100, 140), new Point(140, 140), new Point(140, 160), 30, "26.6°", 3.5),
                new RadialDimension(RadialDimension.Measure.RADIUS, new Point(60, 60), 10, 45, 15, "R50", 3.5),
                new RadialDimension(RadialDimension.Measure.DIAMETER, new Point(60, 60), 12.5, 135, 12, "Ø125", 3.5),
                new Leader(Layer.DIM, Leader.End.ARROW, List.of(new Point(150, 60), new Point(140, 80))),
                new Balloon(new Point(180, 90), "1", 3.5, List.of(new Point(160, 65))));
        Table table = Table.wrapped(new Point(180, 180), List.of(30.0, 60.0),
                List.of(List.of("No.", "Finding"), List.of("1", "a long finding that is wrapped to its column")), 3.5);
        return new Sheet("Sample", "One of everything, scale 1:5", 297, 210, new Scale(5), 3.5,
                List.of(View.around("SAMPLE", shown)), List.of(table));
    }
}
