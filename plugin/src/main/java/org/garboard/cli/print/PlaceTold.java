package org.garboard.cli.print;

import java.util.List;
import java.util.stream.Stream;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.cavitation.Suction;
import org.garboard.flow.layer.Layer;
import org.garboard.flow.place.InceptionThere;
import org.garboard.flow.place.LayerThere;
import org.garboard.flow.place.PlaceInFlow;
import org.garboard.flow.place.Standing;
import org.garboard.flow.streams.Streamline;
import org.garboard.flow.underway.FloatingWater;
import org.garboard.flow.underway.UnderWay;
import org.garboard.mount.BlockSize;
import org.garboard.siting.PlanPoint;

/**
 * What the water does at one place, at one attitude.
 *
 * @param layer there
 * @param bead round a flush face, when it begins to cavitate
 * @param block of the job, as high as a face needs there, likewise
 * @param swept what share of the upper water at the bow passes near; NaN where no water sweeps down
 */
public record PlaceTold(PlanPoint point, LayerThere layer, InceptionThere bead, InceptionThere block, double swept) {
    static final List<String> COLUMNS = List.of("x_m", "y_m", "layer_m", "clear_height_m", "sweep_down_share", "displacement_thickness_m", "depth_m",
        "bead_cavitates_kn", "block_cavitates_kn", "judged");
    private static final int PLACES = 4;
    private static final int LAYER_PLACES = 5;
    private static final double KNOT = 1852 / 3600.0;

    /** @param within streamlines that pass so near count [m] */
    public static PlaceTold of(PlaceInFlow flow, Attitude attitude, UnderWay water, PlanPoint at, double within, BlockSize size) {
        LayerThere layer = water instanceof FloatingWater floating && floating.streams().through(at.x(), at.y()) instanceof Streamline line
            ? flow.layer(floating.floats(), line, at.x()) : flow.layer(attitude, at.x(), at.y());
        InceptionThere block = layer instanceof LayerThere.Grown grown
            ? flow.inception(attitude, at.x(), at.y(), Suction.FairingNose.ofBlock(size.nose(), size.width(), grown.layer().clearHeight()))
            : new InceptionThere.NotKnown(((LayerThere.NotKnown) layer).reason());
        return new PlaceTold(at, layer, flow.inceptionInLayer(attitude, at.x(), at.y(), Suction.RoundedEdge.BEAD), block,
            water instanceof FloatingWater floating ? floating.sweptDown(at.x(), at.y(), within) : Double.NaN);
    }

    List<String> fields() {
        Layer grown = layer instanceof LayerThere.Grown there ? there.layer() : null;
        return List.of(Csv.number(point.x(), PLACES), Csv.number(point.y(), PLACES), grown == null ? "" : Csv.number(grown.thickness(), LAYER_PLACES),
            grown == null ? "" : Csv.number(grown.clearHeight(), LAYER_PLACES), Csv.number(swept, 2),
            grown == null ? "" : Csv.number(grown.displacement(), LAYER_PLACES),
            bead instanceof InceptionThere.From from ? Csv.number(from.depth(), PLACES) : "", knots(bead), knots(block),
            layer instanceof LayerThere.Grown there ? there.standing() == Standing.JUDGED ? "yes" : "no" : "");
    }

    private static String knots(InceptionThere inception) {
        return inception instanceof InceptionThere.From from ? Csv.number(from.speed() / KNOT, 1) : "";
    }

    Stream<String> remarks() {
        Stream<String> unknown = layer instanceof LayerThere.NotKnown none ? Stream.of("layer and cavitation at the place NOT KNOWN: " + none.reason()) : Stream.of();
        return Stream.concat(unknown, Stream.of(boils("a bead round a flush face", bead), boils("a block as high as a face needs", block)).flatMap(each -> each));
    }

    private static Stream<String> boils(String what, InceptionThere inception) {
        return inception instanceof InceptionThere.From from && from.share() >= 1 && from.standing() == Standing.JUDGED
            ? Stream.of("at the place " + what + " cavitates at this speed") : Stream.of();
    }
}
