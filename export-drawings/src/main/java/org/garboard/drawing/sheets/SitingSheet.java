package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Scale;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.Piece;
import org.garboard.drawing.layout.Piece.Corner;
import org.garboard.hull.Hull;

/** Sheet 1: where the transducer goes, and why there. */
final class SitingSheet implements WholeHull {

    private static final List<Corner> NOTES = List.of(Corner.BOTTOM_RIGHT, Corner.TOP_RIGHT, Corner.BOTTOM_LEFT, Corner.TOP_LEFT);

    private final SheetTask task;
    private final List<MarkedSite> sites;

    SitingSheet(SheetTask task) {
        this.task = task;
        this.sites = MarkedSite.of(task.record());
    }

    @Override
    public int number() {
        return 1;
    }

    @Override
    public String title() {
        return "Transducer siting";
    }

    @Override
    public String documentType() {
        return "Siting drawing";
    }

    @Override
    public String description() {
        return "Profile, bottom plan seen from below with bow to the right and starboard up, body plan looking forward; "
                + "feasible regions and the best site of each mount.";
    }

    @Override
    public Hull hull() {
        return task.hull();
    }

    @Override
    public List<List<Piece>> arrangements(Scale scale) {
        Lettering lettering = task.lettering();
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece(List.of(lengthwise(scale)), List.of(Corner.TOP_LEFT)));
        pieces.add(new Piece(List.of(Cluster.of(BodyPlanView.named(task, scale, sites)),
                Cluster.of(BodyPlanView.plain(task, scale, sites))),
                List.of(Corner.TOP_LEFT, Corner.BOTTOM_LEFT, Corner.TOP_RIGHT)));
        if (!sites.isEmpty()) {
            pieces.add(new Piece(SiteTable.lookBeforeCutting(sites).shapes(lettering), NOTES));
            pieces.add(new Piece(Cautions.of(task.table()).shapes(lettering), NOTES));
            pieces.add(new Piece(SiteTable.shapes(task, sites),
                    List.of(Corner.BOTTOM_LEFT, Corner.TOP_LEFT, Corner.BOTTOM_RIGHT, Corner.TOP_RIGHT)));
        } else {
            pieces.add(new Piece(Cautions.of(task.table()).shapes(lettering), NOTES));
        }
        pieces.add(new Piece(SitingNotes.of(task, sites).shapes(lettering), NOTES));
        pieces.add(new Piece(List.of(RegionHatch.legend(task.record(), lettering)),
                List.of(Corner.BOTTOM_LEFT, Corner.TOP_RIGHT, Corner.TOP_LEFT, Corner.BOTTOM_RIGHT)));
        return List.of(pieces);
    }

    private Cluster lengthwise(Scale scale) {
        return task.inLine(ProfileView.of(task, scale, sites), BottomPlanView.of(task, scale, sites));
    }
}
