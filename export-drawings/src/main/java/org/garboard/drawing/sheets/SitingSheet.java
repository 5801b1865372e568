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
    private final List<Piece> words;

    SitingSheet(SheetTask task) {
        this.task = task;
        this.sites = MarkedSite.of(task.record());
        this.words = words();
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
                + "feasible regions and the best site of each mount, stagnation lines and wakes.";
    }

    @Override
    public Hull hull() {
        return task.hull();
    }

    @Override
    public List<List<Piece>> arrangements(Scale scale) {
        return List.of(pieces(scale, List.of(lengthwise(scale))));
    }

    @Override
    public List<List<Piece>> runningOn(Scale scale) {
        Cluster profile = Cluster.of(ProfileView.of(task, scale, sites));
        return List.of(pieces(scale, List.of(lengthwise(scale))),
                pieces(scale, List.of(Cluster.of(BottomPlanView.of(task, scale, sites)), profile)),
                pieces(scale, List.of(Cluster.of(BottomPlanView.narrow(task, scale, sites)),
                        Cluster.of(ProfileView.narrow(task, scale, sites)))));
    }

    @Override
    public List<Piece> onEveryPage() {
        return List.of(Cautions.brief().piece(task.lettering(), NOTES));
    }

    private List<Piece> pieces(Scale scale, List<Cluster> lengthwise) {
        List<Piece> pieces = new ArrayList<>();
        lengthwise.forEach(views -> pieces.add(new Piece(List.of(views), List.of(Corner.TOP_LEFT))));
        pieces.add(new Piece(List.of(Cluster.of(BodyPlanView.named(task, scale, sites)),
                Cluster.of(BodyPlanView.plain(task, scale, sites))),
                List.of(Corner.TOP_LEFT, Corner.BOTTOM_LEFT, Corner.TOP_RIGHT)));
        pieces.addAll(words);
        pieces.add(new Piece(List.of(RegionHatch.legend(task.record(), task.lettering())),
                List.of(Corner.BOTTOM_LEFT, Corner.TOP_RIGHT, Corner.TOP_LEFT, Corner.BOTTOM_RIGHT)));
        task.water().legend(task.lettering()).ifPresent(legend -> pieces.add(new Piece(List.of(legend),
                List.of(Corner.BOTTOM_LEFT, Corner.TOP_RIGHT, Corner.TOP_LEFT, Corner.BOTTOM_RIGHT))));
        return pieces;
    }

    /** Tables and notes, alike at every scale. */
    private List<Piece> words() {
        Lettering lettering = task.lettering();
        List<Piece> pieces = new ArrayList<>();
        if (!sites.isEmpty()) {
            pieces.add(SiteTable.lookBeforeCutting(sites).piece(lettering, NOTES));
        }
        pieces.add(Cautions.of(task.table()).piece(lettering, NOTES));
        if (!sites.isEmpty()) {
            pieces.add(SiteTable.piece(task, sites,
                    List.of(Corner.BOTTOM_LEFT, Corner.TOP_LEFT, Corner.BOTTOM_RIGHT, Corner.TOP_RIGHT)));
        }
        pieces.add(SitingNotes.of(task, sites).piece(lettering, NOTES));
        return pieces;
    }

    private Cluster lengthwise(Scale scale) {
        return task.inLine(ProfileView.of(task, scale, sites), BottomPlanView.of(task, scale, sites));
    }
}
