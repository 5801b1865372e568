package org.garboard.meshfile;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.mesh.TriangleMesh;
import org.apache.commons.geometry.io.core.input.StreamGeometryInput;
import org.apache.commons.geometry.io.euclidean.threed.IO3D;
import org.apache.commons.geometry.io.euclidean.threed.GeometryFormat3D;
import org.apache.commons.numbers.core.Precision;
import org.garboard.craft.Transducer;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.PocketOutcome;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.pocket.BoatTold;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.FormerWish;
import org.garboard.mount.pocket.PocketLayup;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.hull.Hull;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;
import org.garboard.solid.Draft;
import org.garboard.solid.Draft.Looks;
import org.garboard.solid.Draft.Rim;
import org.garboard.solid.Fill;
import org.garboard.solid.Height;
import org.garboard.solid.Loop;
import org.garboard.skin.HullSkin;
import org.garboard.skin.Layup;
import org.garboard.skin.SkinMaterial;
import org.garboard.solid.Solid;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Mesh files against readers that are not ours. */
class MeshFileTest {

    /** A washer far from the origin, as on a long boat. */
    private static Solid washer() {
        Draft draft = new Draft((u, v, w, out, at) -> {
            out[at] = 15 + u;
            out[at + 1] = -2 + v;
            out[at + 2] = w;
        });
        Loop outer = Loop.circle(0, 0, 0.05, 1e-4);
        Loop inner = Loop.circle(0.01, 0, 0.02, 1e-4);
        Fill fill = Fill.of(outer, List.of(inner), 0.01);
        Height low = Height.level(0);
        Height high = (u, v) -> 0.01 + 0.1 * u;
        List<Rim> below = List.of(draft.rim(outer, low), draft.rim(inner, low));
        List<Rim> above = List.of(draft.rim(outer, high), draft.rim(inner, high));
        draft.face(Looks.DOWN, fill, low, below);
        draft.face(Looks.UP, fill, high, above);
        draft.wallOutside(below.get(0), above.get(0));
        draft.wallInside(below.get(1), above.get(1));
        return draft.solid();
    }

    private static TableLine row(LineKind kind, Measure measure, double value) {
        return new TableLine(kind, kind == LineKind.KEEL ? "Keel" : kind == LineKind.CHINE ? "Chine" : "Sheer", 0, measure,
            IntStream.range(0, 9).mapToObj(i -> new Entry(i, value)).toList());
    }

    /** A V of 20 deg, 8 m long. */
    private static Hull wedge() {
        return Hull.through(new OffsetTable("wedge", SkinSurface.OUTSIDE_OF_SKIN, 1e-6,
            IntStream.range(0, 9).mapToObj(i -> new Station(String.valueOf(i), i)).toList(),
            List.of(row(LineKind.KEEL, Measure.HEIGHT, 0), row(LineKind.CHINE, Measure.HEIGHT, Math.tan(Math.toRadians(20))),
                row(LineKind.CHINE, Measure.HALF_BREADTH, 1), row(LineKind.SHEER, Measure.HEIGHT, 1.5), row(LineKind.SHEER, Measure.HALF_BREADTH, 1.2))));
    }

    /** A pocket with ramps, its laminate, the pieces of its former, and the skin round it. */
    @Test
    void admeshFindsTheBodiesOfAPocketClosed() throws IOException {
        admeshFindsClosed(List.of("pocket", "body-in-pocket", "pocket-layer-1", "pocket-former-starboard", "pocket-former-port", "skin-round-pocket"),
            PocketMake.Into.NEW_MOLD, FormerWish.Mold.SPLIT_ON_CENTRELINE);
    }

    @Test
    void admeshFindsTheBodiesOfAPocketInAnExistingBoatClosed() throws IOException {
        admeshFindsClosed(List.of("pocket", "body-in-pocket", "pocket-layer-1", "pocket-former", "skin-round-pocket"),
            PocketMake.Into.EXISTING_BOAT, FormerWish.Mold.ONE_PIECE);
    }

    private static void admeshFindsClosed(List<String> names, PocketMake.Into into, FormerWish.Mold mold) throws IOException {
        PocketMake make = PocketMake.USUAL.with(new PocketLayup(0, List.of(new PocketLayup.Layer("glass", 0.006)), 12, 0.003))
            .into(into, new FormerWish(mold, Angle.ofDegrees(0), 0.002, 0));
        BoatTold boat = new BoatTold(OptionalDouble.empty(), Optional.of(new HullSkin(SkinMaterial.SOLID_GLASS, Optional.of(new Layup.Whole(0.006)),
            List.of(), Optional.empty(), List.of())), Optional.empty());
        Transducer body = new Transducer("body", 0.3, 0.15, 0.042, 0.03, 0.02, Angle.ofDegrees(0));
        PocketOutcome outcome = KeelPocketCut.cut(wedge(), body,
            new PocketWish(OptionalDouble.empty(), 0.003, 12, make), boat, 4, 0);
        List<NamedSolid> parts = ((PocketOutcome.Built) outcome).pocket().solids();
        assertEquals(names, parts.stream().map(NamedSolid::name).toList());
        for (NamedSolid part : parts) {
            Admesh.read(StlFile.of(part.solid())).isOneClosedBody(part.solid().triangles(), part.solid().volume());
        }
    }

    @Test
    void admeshFindsOneClosedBody() throws IOException {
        Solid washer = washer();
        Admesh.read(StlFile.of(washer)).isOneClosedBody(washer.triangles(), washer.volume());
        double exact = Math.PI * (0.05 * 0.05 * 0.01 - 0.02 * 0.02 * 0.011);
        assertEquals(exact, washer.volume(), 1e-15);
    }

    @Test
    void commonsGeometryReadsBoth() {
        Solid washer = washer();
        for (byte[] file : List.of(StlFile.of(washer), ObjFile.of("washer", washer))) {
            GeometryFormat3D format = file[0] == '#' ? GeometryFormat3D.OBJ : GeometryFormat3D.STL;
            TriangleMesh mesh = IO3D.readTriangleMesh(new StreamGeometryInput(new ByteArrayInputStream(file)), format,
                Precision.doubleEquivalenceOfEpsilon(1e-6));
            assertEquals(washer.triangles(), mesh.getFaceCount());
            assertEquals(washer.vertices(), mesh.getVertexCount());
            assertEquals(15_000, mesh.getBounds().getCentroid().getX(), 0.01);
            assertEquals(-2000, mesh.getBounds().getCentroid().getY(), 0.01);
        }
    }

    /** Layout of the format: 80 bytes of header, the count, 50 bytes for each triangle, its normal first. */
    @Test
    void law_stlHoldsUnitNormalsOutward() {
        Solid washer = washer();
        byte[] file = StlFile.of(washer);
        assertEquals(84 + 50 * washer.triangles(), file.length);
        assertTrue(new String(file, 0, 80, StandardCharsets.US_ASCII).startsWith("mm; hull frame"));
        ByteBuffer buffer = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
        assertEquals(washer.triangles(), buffer.getInt(80));
        double down = 0;
        for (int t = 0; t < washer.triangles(); t++) {
            int at = 84 + 50 * t;
            assertEquals(1, Math.sqrt(square(buffer.getFloat(at)) + square(buffer.getFloat(at + 4)) + square(buffer.getFloat(at + 8))), 1e-6);
            down += buffer.getFloat(at + 8) < -0.999 ? 1 : 0;
        }
        assertTrue(down > 10, "triangles that look down: " + down);
    }

    private static double square(double a) {
        return a * a;
    }

    @Test
    void law_sameBytesOnAnyLocale() {
        byte[] stl = StlFile.of(washer());
        byte[] obj = ObjFile.of("washer", washer());
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertArrayEquals(stl, StlFile.of(washer()));
            assertArrayEquals(obj, ObjFile.of("washer", washer()));
        } finally {
            Locale.setDefault(before);
        }
    }
}
