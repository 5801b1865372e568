package org.garboard.cutout.inhull;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.cutout.template.Template;
import org.garboard.cutout.template.Template.Kind;
import org.garboard.cutout.template.Template.Mark;
import org.garboard.solid.Loop;

/**
 * The outside of the bath's wall unrolled: its brim straight, its foot as it is scribed; to wrap round the ring, or round a
 * former for one of laminate. It begins and ends at the after end, on the axis fore and aft.
 */
record WallStrip(AxisFrame inside, Loop outer, double brim) {

    Template template() {
        int start = aftermost();
        List<FlatPoint> foot = new ArrayList<>();
        double along = -outer.perimeter() / 2;
        double lowest = inside.outside(outer.u(start), outer.v(start));
        for (int i = 0; i <= outer.size(); i++) {
            int at = (start + i) % outer.size();
            double height = inside.outside(outer.u(at), outer.v(at));
            lowest = Math.min(lowest, height);
            foot.add(new FlatPoint(along, height));
            int next = (at + 1) % outer.size();
            along += Math.hypot(outer.u(next) - outer.u(at), outer.v(next) - outer.v(at));
        }
        double middle = (brim + lowest) / 2;
        List<FlatPoint> outline = new ArrayList<>();
        foot.forEach(place -> outline.add(new FlatPoint(place.u(), place.v() - middle)));
        double half = outer.perimeter() / 2;
        outline.add(new FlatPoint(half, brim - middle));
        outline.add(new FlatPoint(-half, brim - middle));
        double under = inside.outside(outer.u(foremost()), 0);
        Mark bow = new Mark(Kind.PLUMB, List.of(new FlatPoint(0, under - middle), new FlatPoint(0, brim - middle)));
        return new Template("bath-wall", Template.Up.WALL, outline, List.of(), List.of(), List.of(bow), 0);
    }

    private int aftermost() {
        int most = 0;
        for (int i = 1; i < outer.size(); i++) {
            double ahead = outer.u(i) - outer.u(most);
            if (ahead > 1e-9 || ahead > -1e-9 && Math.abs(outer.v(i)) < Math.abs(outer.v(most))) {
                most = i;
            }
        }
        return most;
    }

    private int foremost() {
        int most = 0;
        for (int i = 1; i < outer.size(); i++) {
            if (outer.u(i) < outer.u(most)) {
                most = i;
            }
        }
        return most;
    }
}
