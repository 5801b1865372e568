package org.garboard.drawing.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.fairing.FairingBlock;
import org.garboard.cutout.fairing.FairingCut;
import org.garboard.cutout.fairing.FairingWish;
import org.garboard.cutout.flush.FlushCut;
import org.garboard.cutout.flush.FlushCutout;
import org.garboard.cutout.inhull.BathCut;
import org.garboard.cutout.inhull.BathWish;
import org.garboard.cutout.made.PartsMade;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.cutout.template.Template;
import org.garboard.cutout.transom.BracketCut;
import org.garboard.cutout.transom.BracketWish;
import org.garboard.drawing.dxf.CutDrawing;
import org.garboard.drawing.dxf.CutDxfRules;
import org.garboard.drawing.dxf.CutLayer;
import org.garboard.drawing.dxf.EzdxfAudit;
import org.garboard.hull.Hull;
import org.garboard.meshfile.Admesh;
import org.garboard.meshfile.StlFile;
import org.garboard.reader.OutsideReader;
import org.garboard.skin.Layup;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Templates and solids of through-hulls on a boat with curved sections, held to rules and outside readers. */
class TemplateCutFileTest {
    private static final Transducer BODY = new Transducer("Puck, invented", 0.096, 0.076, 0.028, 0.038, 0.020, Angle.ofDegrees(20));

    private static Hull hull() {
        return Hull.through(new SampleBoat(12, 13).table());
    }

    private static ThroughHullWish wish() {
        return ThroughHullWish.of(Optional.of(new Layup.Sandwich(0.004, Layup.Core.FOAM, 0.015, 0.003)));
    }

    private static FlushCutout flush() throws CannotBeBuilt {
        return FlushCut.cut(hull(), BODY, wish(), 8, 0.45);
    }

    private static FairingBlock fairing() throws CannotBeBuilt {
        return FairingCut.cut(hull(), BODY, FairingWish.of(wish()), 8, 0.45);
    }

    /** Of every mount, the flush one with its sleeve. */
    private static List<PartsMade> all() throws CannotBeBuilt {
        return List.of(PartsMade.of(flush()), PartsMade.of(fairing()),
            PartsMade.of(FlushCut.cut(hull(), BODY, ThroughHullWish.of(Optional.of(new Layup.Whole(0.006))).sleeved(0.003), 8, 0.45)),
            PartsMade.of(BathCut.cut(hull(), BODY, BathWish.of(Optional.of(new Layup.Whole(0.012))), 8, 0.45)),
            PartsMade.of(BracketCut.cut(hull(), BODY, BracketWish.of(Optional.empty()), BottomFeatures.NOT_LISTED, Optional.empty(), 0.45)));
    }

    private static List<Template> templates() throws CannotBeBuilt {
        return all().stream().flatMap(parts -> parts.templates().stream()).toList();
    }

    @Test
    void exact_everyTemplateKeepsTheRules(@TempDir Path folder) throws CannotBeBuilt, IOException {
        for (Template template : templates()) {
            assertEquals(List.of(), CutDxfRules.broken(TemplateCutFile.dxf(template)), template.name());
        }
        OutsideReader.EZDXF.require();
        for (Template template : templates()) {
            Path file = folder.resolve(TemplateCutFile.fileName(template));
            Files.write(file, TemplateCutFile.dxf(template));
            EzdxfAudit.assertClean(file);
        }
    }

    /** Bow to the right and starboard up: u aft becomes -x, v to starboard y, in millimetres. */
    @Test
    void exact_outsideUp() throws CannotBeBuilt {
        for (Template template : templates().stream().filter(one -> one.up() == Template.Up.OUTSIDE).toList()) {
            CutDrawing drawing = TemplateCutFile.drawing(template);
            double bow = -1000 * template.outline().stream().mapToDouble(FlatPoint::u).min().orElseThrow();
            double starboard = 1000 * template.outline().stream().mapToDouble(FlatPoint::v).max().orElseThrow();
            assertEquals(bow, drawing.contours().get(0).corners().stream().mapToDouble(corner -> corner.x()).max().orElseThrow(), 1e-9);
            assertEquals(starboard, drawing.contours().get(0).corners().stream().mapToDouble(corner -> corner.y()).max().orElseThrow(), 1e-9);
            assertEquals(CutLayer.CUT_OUTER, drawing.contours().get(0).layer());
            assertTrue(drawing.strokes().stream().allMatch(stroke -> stroke.layer() == CutLayer.MARK));
            // arrow: two strokes from one tip ahead of the middle
            assertTrue(drawing.strokes().stream().anyMatch(one -> drawing.strokes().stream().anyMatch(other -> one != other
                && one.from().equals(other.from()) && one.from().x() > 0 && one.to().x() < one.from().x()
                && one.to().y() == -other.to().y() && one.to().y() > 0)), template.name() + " has no arrow");
        }
    }

    /** Inside up port is up: the high side of a V to starboard lies low. Seen from aft starboard is to the right and up is up. */
    @Test
    void exact_otherSidesUp() throws CannotBeBuilt {
        Template foot = templates().stream().filter(one -> one.up() == Template.Up.INSIDE).findFirst().orElseThrow();
        FlatPoint starboard = foot.outline().stream().max(Comparator.comparingDouble(FlatPoint::v)).orElseThrow();
        CutDrawing inside = TemplateCutFile.drawing(foot);
        assertEquals(-1000 * starboard.v(), inside.contours().get(0).corners().stream().mapToDouble(corner -> corner.y()).min().orElseThrow(), 1e-9);
        Template drilling = templates().stream().filter(one -> one.up() == Template.Up.AFT).findFirst().orElseThrow();
        CutDrawing aft = TemplateCutFile.drawing(drilling);
        assertEquals(drilling.holes().stream().map(hole -> 1000 * hole.centre().u()).toList(), aft.holes().stream().map(hole -> hole.centre().x()).toList());
        assertEquals(drilling.holes().stream().map(hole -> 1000 * hole.centre().v()).toList(), aft.holes().stream().map(hole -> hole.centre().y()).toList());
        assertEquals("transom-drilling-aft-side-up_mm_1to1.dxf", TemplateCutFile.fileName(drilling));
    }

    @Test
    void admeshFindsOneClosedBodyInEveryPart() throws CannotBeBuilt, IOException {
        for (NamedSolid part : all().stream().flatMap(parts -> parts.solids().stream()).toList()) {
            Admesh.read(StlFile.of(part.solid())).isOneClosedBody(part.solid().triangles(), part.solid().volume());
        }
    }
}
