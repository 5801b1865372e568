package org.garboard.drawing.dxf;

import java.util.List;
import org.garboard.drawing.AngularDimension;
import org.garboard.drawing.Arc;
import org.garboard.drawing.Canvas;
import org.garboard.drawing.Circle;
import org.garboard.drawing.Dimension;
import org.garboard.drawing.Hatch;
import org.garboard.drawing.Line;
import org.garboard.drawing.LinearDimension;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.RadialDimension;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Solid;
import org.garboard.drawing.Text;
import org.garboard.drawing.Vertex;

/** Writes entities of model space, or of a dimension's block, at true size. */
final class EntityCanvas implements Canvas {
    private final Tags tags;
    private final Handles handles;
    private final int owner;
    private final Scale scale;
    private final DimensionBlocks blocks;

    EntityCanvas(Tags tags, Handles handles, int owner, Scale scale, DimensionBlocks blocks) {
        this.tags = tags;
        this.handles = handles;
        this.owner = owner;
        this.scale = scale;
        this.blocks = blocks;
    }

    private Tags begin(String type, String layer) {
        return tags.tag(0, type).handle(5, handles.next()).handle(330, owner)
                .tag(100, "AcDbEntity").tag(8, layer);
    }

    private Tags point(int code, Point point) {
        return tags.point(code, scale.trueMm(point.x()), scale.trueMm(point.y()));
    }

    @Override
    public void line(Line line) {
        begin("LINE", line.layer().name()).tag(100, "AcDbLine");
        point(10, line.from());
        point(11, line.to());
    }

    @Override
    public void arc(Arc arc) {
        begin("ARC", arc.layer().name()).tag(100, "AcDbCircle");
        point(10, arc.centre()).number(40, scale.trueMm(arc.radius()))
                .tag(100, "AcDbArc").number(50, turned(arc.startDeg())).number(51, turned(arc.endDeg()));
    }

    private static double turned(double degrees) {
        double rest = degrees % 360;
        return rest < 0 ? rest + 360 : rest;
    }

    @Override
    public void circle(Circle circle) {
        begin("CIRCLE", circle.layer().name()).tag(100, "AcDbCircle");
        point(10, circle.centre()).number(40, scale.trueMm(circle.radius()));
    }

    /** A bulge of nought is left out: one reader drops a straight run that carries it. */
    @Override
    public void polyline(Polyline polyline) {
        begin("LWPOLYLINE", polyline.layer().name()).tag(100, "AcDbPolyline")
                .tag(90, polyline.vertices().size()).tag(70, polyline.run() == Polyline.Run.CLOSED ? 1 : 0);
        for (Vertex vertex : polyline.vertices()) {
            tags.flat(10, scale.trueMm(vertex.at().x()), scale.trueMm(vertex.at().y()));
            if (!vertex.straight()) {
                tags.number(42, vertex.bulge());
            }
        }
    }

    /**
     * Code 73 stays at what it is when left out, 0. Written as the last of the text its value would make FreeCAD 0.20 lose the
     * entity that follows: there a line that reads 0 begins the next one.
     */
    @Override
    public void text(Text text) {
        begin("TEXT", text.layer().name()).tag(100, "AcDbText");
        point(10, text.at()).number(40, scale.trueMm(text.height())).tag(1, AsciiText.of(text.words()))
                .number(50, text.rotationDeg()).tag(7, TableSection.LETTERING)
                .tag(72, text.anchor().ordinal());
        point(11, text.at()).tag(100, "AcDbText");
    }

    /** Corners of a filled figure go zigzag: the third and fourth change places. */
    @Override
    public void solid(Solid solid) {
        List<Point> corners = solid.corners();
        begin("SOLID", solid.layer().name()).tag(100, "AcDbTrace");
        point(10, corners.get(0));
        point(11, corners.get(1));
        point(12, corners.size() == 4 ? corners.get(3) : corners.get(2));
        point(13, corners.get(2));
    }

    @Override
    public void hatch(Hatch hatch) {
        begin("HATCH", hatch.layer().name());
        HatchTags.write(tags, hatch, scale);
    }

    @Override
    public void linearDimension(LinearDimension linear) {
        String block = block(linear, List.of(linear.from(), linear.to(), linear.lineEnd()));
        beginDimension(linear);
        new DimensionTags(tags, scale, block).linear(linear);
    }

    @Override
    public void angularDimension(AngularDimension angular) {
        String block = block(angular, List.of(angular.vertex(), angular.first(), angular.second(), angular.onArc()));
        beginDimension(angular);
        new DimensionTags(tags, scale, block).angular(angular);
    }

    @Override
    public void radialDimension(RadialDimension radial) {
        String block = block(radial, List.of(radial.onCurve(), DimensionTags.basis(radial)));
        beginDimension(radial);
        new DimensionTags(tags, scale, block).radial(radial);
    }

    private void beginDimension(Dimension dimension) {
        begin("DIMENSION", dimension.lettering().layer().name());
    }

    /** Puts a dimension's strokes and the points it hangs on into a block of their own; its name. */
    private String block(Dimension dimension, List<Point> definitionPoints) {
        DimensionBlocks.Block block = blocks.open(handles);
        EntityCanvas inBlock = new EntityCanvas(block.strokes(), handles, block.record(), scale, blocks);
        inBlock.strokes(dimension);
        definitionPoints.forEach(inBlock::definitionPoint);
        return block.name();
    }

    private void definitionPoint(Point point) {
        begin("POINT", TableSection.DEFINITION_POINTS).tag(100, "AcDbPoint");
        point(10, point);
    }
}
